// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

// The side view. Diameters stand in a column on either side of it with the chamfers beneath them,
// positions along the shank in bands above, lengths in one band below, so that no text meets
// another whatever the piece looks like.
#include <algorithm>

#include "length/print.hpp"
#include "make/drawing_parts.hpp"

namespace make {

namespace {

// Millimetres of paper.
constexpr double k_column = (k_drawing_width - k_most_view_length) / 2;
constexpr double k_dimension_off = 8; // dimension line of a diameter from the view
constexpr double k_leader_off = 4;    // elbow of a chamfer's leader from the view
constexpr double k_between = 3;       // between texts, and from the view to text
constexpr double k_tail_room = 6;     // for an arrow from outside
constexpr double k_clear = 7;         // from the view up to text, past a diameter's arrow and text
constexpr double k_clear_of_plane = k_plane_height + 3; // the same past the letter of a section
constexpr double k_past_tail = 5;    // level part that takes text clear of such an arrow
constexpr double k_past_plane = 6.5; // letter of a cutting plane past the end of a short shank
constexpr double k_frame_off = 2.5;  // tolerance frame from the dimension line above it
constexpr double k_frame_leader = 6;
constexpr double k_frame_past = 1.5; // extension line past the frame's leader
constexpr double k_radius_slant = 6; // leader of a corner radius

// What is said beside one end of the view.
struct End {
    double along = 0; // where the view ends
    double dia = 0;
    Stack dia_words;
    Stack chamfer_words;
    double chamfer = 0;
    Side side = Side::left;
};

class View {
  public:
    View(Sketch& sketch, const Subject& subject, double top);
    double draw();

  private:
    [[nodiscard]] Stack undercut_words() const;
    [[nodiscard]] double height_above() const;
    [[nodiscard]] std::string tolerance(const Dimension& dimension) const;
    double column(const End& end);
    double columns();
    void flat();
    [[nodiscard]] double upper_letter(double along) const;
    double cutting_plane();
    [[nodiscard]] bool framed() const;
    double squareness(double lengths_y);
    void corner();
    double lengths(double top);

    Sketch& sketch_;
    const Subject& subject_;
    const Proportions& sizes_;
    double band_; // height of one line of dimensions
    Frame frame_;
    double top_ = 0; // of the view itself
};

View::View(Sketch& sketch, const Subject& subject, double top)
    : sketch_(sketch), subject_(subject), sizes_(subject.sizes),
      band_(height_of(limits_stack({}, subject.lettering), k_dimension_size) + k_between) {
    frame_.factor = subject.scale.factor;
    const double room = k_most_view_length - sizes_.length() * frame_.factor;
    frame_.left = k_column + room / 2;
    top_ = top + height_above();
    frame_.axis = top_ + sizes_.largest_dia() / 2 * frame_.factor;
}

Stack View::undercut_words() const {
    return {"undercut", subject_.spec.undercut->name};
}

// New pilots have the tolerances of form in frames; of what is made on an owned pilot a note tells.
bool View::framed() const {
    return subject_.piece.kind == PieceKind::pilot;
}

double View::height_above() const {
    double height = k_tail_room;
    if (subject_.spec.flat_at)
        height =
            std::max(height, k_clear_of_plane + (subject_.spec.flat_at->limits ? 2 : 1) * band_);
    if (subject_.spec.undercut)
        height = std::max(height, k_clear + height_of(undercut_words(), k_dimension_size));
    if (subject_.spec.corner_radius)
        height = std::max(height, k_clear + band_);
    return height;
}

// A diameter, with the shank as datum and the nose held to it, then a chamfer. Returns where they
// end.
double View::column(const End& end) {
    const bool left = end.side == Side::left;
    const double away = left ? -1 : 1;
    const double edge = frame_.x(end.along);
    const double x = edge + away * k_dimension_off, low = frame_.y(-end.dia / 2);
    sketch_.upright({x, frame_.y(end.dia / 2), low, edge, end.side, left && framed()},
                    end.dia_words);
    double y = std::max(low + k_tail_room,
                        frame_.axis + height_of(end.dia_words, k_dimension_size) / 2 + k_between);
    if (framed() && left) {
        draw_datum(sketch_, {x, low}, Subject::k_datum);
        y = std::max(y, low + k_datum_height + k_between);
    } else if (framed()) {
        const double top = frame_.axis + height_of(end.dia_words, k_dimension_size) / 2 + 1.5;
        draw_tolerance(sketch_, x + k_frame_off, top + k_frame_height / 2, Characteristic::runout,
                       tolerance(subject_.spec.runout), Subject::k_datum);
        y = std::max(y, top + k_frame_height + k_between);
    }
    if (end.chamfer_words.empty())
        return y;
    const double half = height_of(end.chamfer_words, k_dimension_size) / 2;
    y += half;
    sketch_.leader(frame_.at(end.along - away * end.chamfer / 2, -(end.dia - end.chamfer) / 2),
                   {edge + away * k_leader_off, y}, end.side, end.chamfer_words);
    return y + half;
}

std::string View::tolerance(const Dimension& dimension) const {
    return length::to_text(dimension.limits->hi, subject_.lettering.unit);
}

double View::columns() {
    const auto& spec = subject_.spec;
    const auto& notes = subject_.notes;
    const double right =
        column({sizes_.length(), sizes_.nose_dia, notes.words(spec.pilot_dia, "Ø"),
                notes.words(spec.nose_chamfer, "", " x 45°"), sizes_.nose_chamfer, Side::right});
    double left = frame_.axis;
    if (spec.sleeve_bore)
        left = column({0, sizes_.bore, notes.words(*spec.sleeve_bore, "Ø"), {}, 0, Side::left});
    else if (spec.shank_chamfer)
        left = column({0, sizes_.shank_dia, notes.words(spec.shank_dia, "Ø"),
                       notes.words(*spec.shank_chamfer, "", " x 45°"), sizes_.shank_chamfer,
                       Side::left});
    return std::max(left, right);
}

// Over the plane, or beside the flat where the flat's own extension lines leave no room.
double View::upper_letter(double along) const {
    const double start = frame_.x(sizes_.flat_at);
    const double end = frame_.x(sizes_.flat_at + sizes_.flat_length);
    const double corner = frame_.x(sizes_.shank_length - sizes_.undercut_width);
    const double middle = frame_.x(along);
    if (sizes_.flat_length <= 0)
        return corner - middle >= k_plane_letter_room ? middle : frame_.x(0) - k_past_plane;
    if (end - start >= k_plane_letter_room)
        return middle;
    if (corner - end >= k_plane_letter_room)
        return end + k_plane_letter_room / 2;
    if (start - frame_.x(0) >= k_plane_letter_room)
        return start - k_plane_letter_room / 2;
    return frame_.x(0) - k_plane_letter_room / 2;
}

// Returns where its letter ends.
double View::cutting_plane() {
    if (!subject_.spec.flat_at)
        return frame_.axis;
    const double along =
        sizes_.flat_length > 0 ? sizes_.flat_at + sizes_.flat_length / 2 : sizes_.shank_length / 2;
    const double r = sizes_.shank_dia / 2;
    draw_cutting_plane(sketch_, frame_.x(along), frame_.y(r), frame_.y(-r), Subject::k_section,
                       upper_letter(along));
    return frame_.y(-r) + k_plane_height;
}

// Where the flat lies, in the bands above; marked out, a word on how.
void View::flat() {
    const auto& spec = subject_.spec;
    if (!spec.flat_at)
        return;
    const double surface = frame_.y(sizes_.shank_dia / 2);
    const double low = frame_.y(sizes_.shank_dia / 2 - sizes_.flat_depth);
    double y = top_ - k_clear_of_plane - (band_ - k_between) / 2;
    if (!spec.flat_at->limits) {
        const double tip = frame_.x(sizes_.shank_length / 4);
        sketch_.leader({tip, surface}, {tip - k_leader_off, y}, Side::left,
                       subject_.notes.words(*spec.flat_at, "flat "));
        return;
    }
    const double start = frame_.x(sizes_.flat_at);
    const double end = frame_.x(sizes_.flat_at + sizes_.flat_length);
    if (sizes_.flat_at > 0) {
        sketch_.across({frame_.x(0), start, y, surface, surface, Side::left},
                       subject_.notes.words(*spec.flat_at));
        y -= band_;
    }
    sketch_.across({start, end, y, low, surface, Side::left},
                   subject_.notes.words(*spec.flat_length));
}

// The corner between nose and shank: its leader goes up where nothing else is.
void View::corner() {
    const auto& spec = subject_.spec;
    if (spec.undercut) {
        const auto words = undercut_words();
        const double along = sizes_.shank_length - sizes_.undercut_width / 3;
        const double up = sizes_.shank_dia / 2 - sizes_.undercut_depth;
        const double y = top_ - k_clear - height_of(words, k_dimension_size) / 2;
        const Point elbow{frame_.x(along), y};
        sketch_.line(elbow, {elbow.x + k_past_tail, y}, Pen::thin);
        sketch_.leader(frame_.at(along, up), elbow, Side::right, {});
        sketch_.stack(elbow.x + k_past_tail + 1, y, words, k_dimension_size, Anchor::start);
    } else if (spec.corner_radius) {
        const double in = sizes_.corner_radius * 0.3;
        const Point tip = frame_.at(sizes_.shank_length + in, sizes_.nose_dia / 2 + in);
        const auto words = subject_.notes.words(*spec.corner_radius, "corner R ");
        const double y = top_ - k_clear - height_of(words, k_dimension_size) / 2;
        sketch_.leader(tip, {tip.x + k_radius_slant, y}, Side::right, words);
    }
}

double View::lengths(double top) {
    const auto& spec = subject_.spec;
    const double y = top + k_between + band_ / 2;
    const double right_edge = frame_.y(-sizes_.nose_dia / 2);
    if (subject_.piece.kind == PieceKind::turn_down)
        return top;
    if (subject_.piece.kind == PieceKind::sleeve) {
        sketch_.across(
            {frame_.x(0), frame_.x(sizes_.length()), y, right_edge, right_edge, Side::right},
            subject_.notes.words(spec.pilot_length));
        return y + band_ / 2;
    }
    const double left_edge = frame_.y(-sizes_.shank_dia / 2);
    const double shoulder = std::max(left_edge, right_edge);
    sketch_.across({frame_.x(0), frame_.x(sizes_.shank_length), y, left_edge, shoulder, Side::left},
                   subject_.notes.words(spec.shank_length));
    sketch_.across({frame_.x(sizes_.shank_length), frame_.x(sizes_.length()), y, shoulder,
                    right_edge, Side::right},
                   subject_.notes.words(spec.pilot_length));
    return squareness(y);
}

// Of the shoulder, on the extension line of its face below the lengths, which are at `lengths_y`.
double View::squareness(double lengths_y) {
    const double under = lengths_y + band_ / 2;
    if (!subject_.spec.squareness)
        return under;
    const double y = under + k_frame_height / 2;
    const Point tip{frame_.x(sizes_.shank_length), y};
    sketch_.line({tip.x, lengths_y}, {tip.x, y + k_frame_past}, Pen::thin);
    sketch_.line(tip, {tip.x + k_frame_leader, y}, Pen::thin);
    sketch_.arrow(tip, 180);
    draw_tolerance(sketch_, tip.x + k_frame_leader, y, Characteristic::squareness,
                   tolerance(*subject_.spec.squareness), Subject::k_datum);
    return y + k_frame_height / 2;
}

double View::draw() {
    draw_outline(sketch_, subject_, frame_);
    flat();
    corner();
    const double bottom = frame_.axis + sizes_.largest_dia() / 2 * frame_.factor;
    return lengths(std::max({bottom, columns(), cutting_plane()}));
}

} // namespace

double draw_view(Sketch& sketch, const Subject& subject, double top) {
    return View(sketch, subject, top).draw();
}

} // namespace make

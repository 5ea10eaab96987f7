// SPDX-FileCopyrightText: 2026 The Counterpart authors
// SPDX-License-Identifier: MIT

#include "present/html.hpp"

#include <fmt/format.h>

#include "present/xml.hpp"

namespace present {

std::string html_page(std::string_view title, Paper paper, std::string_view style,
                      std::string_view body) {
    return fmt::format("<!DOCTYPE html>\n"
                       "<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n"
                       "<head>\n<meta charset=\"utf-8\"/>\n"
                       "<title>{}</title>\n"
                       "<style>\n@page {{ size: {}; margin: 12mm; }}{}</style>\n"
                       "</head>\n<body>\n{}</body>\n</html>\n",
                       xml_text(title), paper == Paper::a4 ? "A4" : "letter", style, body);
}

} // namespace present

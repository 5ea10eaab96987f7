-- @NAME@ ${x} ; [[ ]] \n 
"quotes" (a)" )sql" é

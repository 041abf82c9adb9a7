# A room is one static library in one folder. What it may use is said here, once; tests/check_rooms.cmake reads
# this list again and looks at every #include, and the build fails when a room reaches where it may not.
set(ODDGLASS_ROOMS stats domain canon store shelf blinding tasting planning session insight words figures report exchange cli print ui)

set(MAY_USE_stats)
set(MAY_USE_domain)
set(MAY_USE_figures)
set(MAY_USE_canon)
set(MAY_USE_store domain canon)
set(MAY_USE_shelf domain store canon)
set(MAY_USE_blinding domain stats canon)
set(MAY_USE_planning domain stats)
set(MAY_USE_insight domain canon stats)
set(MAY_USE_tasting domain store canon)
set(MAY_USE_session domain store blinding planning tasting canon)
set(MAY_USE_words domain planning insight)
set(MAY_USE_report domain stats shelf session insight words figures)
set(MAY_USE_exchange domain canon shelf planning tasting session)
set(MAY_USE_print domain planning tasting session report words figures)
set(MAY_USE_cli domain canon stats store shelf blinding planning tasting session insight words figures report exchange)
set(MAY_USE_ui domain shelf planning tasting session insight words figures report exchange print)
# These headers of the store are the handle that use cases are given, and a plan as text; every room above may name them.
set(MAY_NAME_THE_HANDLE tasting session report exchange cli ui)
set(HANDLE_HEADERS store/store.h store/keep.h store/together.h store/plan_json.h)

# Rooms that mostly hand on what others worked out: optimising them much costs a third of their build and saves nobody any time.
set(LIGHTLY_OPTIMISED shelf tasting words report exchange cli print ui)

add_library(oddglass_warnings INTERFACE)
target_compile_options(oddglass_warnings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion
  -Wnon-virtual-dtor -Woverloaded-virtual -Werror=switch -Werror=return-type
  $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>)  # false alarms of GCC 12 on adding strings (its bug 105651)
if(ODDGLASS_SANITIZE)
  # A null or stray pointer stops the address sanitizer as well; checking each access twice would take a quarter of the build.
  add_compile_options(-fsanitize=address,undefined -fno-sanitize=null,alignment,object-size,vptr -fno-sanitize-recover=undefined -fno-omit-frame-pointer)
  add_link_options(-fsanitize=address,undefined)
endif()
if(ODDGLASS_COVERAGE)
  add_compile_options(--coverage -O0)
  add_link_options(--coverage)
endif()

# oddglass_room(NAME FILES a.cpp ... [LINKS libs ...])
function(oddglass_room name)
  cmake_parse_arguments(ROOM "" "" "FILES;LINKS" ${ARGN})
  add_library(oddglass_${name} STATIC ${ROOM_FILES})
  target_link_libraries(oddglass_${name} PRIVATE oddglass_warnings PUBLIC ${ROOM_LINKS})
  if(ODDGLASS_STATS_FROM)  # then only what a test needs is built
    set_target_properties(oddglass_${name} PROPERTIES EXCLUDE_FROM_ALL ON)
  endif()
  if(name IN_LIST LIGHTLY_OPTIMISED)
    target_compile_options(oddglass_${name} PRIVATE $<$<CONFIG:Release>:-O1>)
  endif()
  foreach(lower IN LISTS MAY_USE_${name})
    target_link_libraries(oddglass_${name} PUBLIC $<TARGET_NAME_IF_EXISTS:oddglass_${lower}>)
  endforeach()
  if(name STREQUAL "stats")
    target_include_directories(oddglass_${name} PUBLIC ${PROJECT_SOURCE_DIR})
  else()
    target_include_directories(oddglass_${name} PUBLIC ${PROJECT_SOURCE_DIR}/app ${PROJECT_SOURCE_DIR})
  endif()
endfunction()

add_custom_target(check_rooms ALL
  COMMAND ${CMAKE_COMMAND} -DSOURCE=${PROJECT_SOURCE_DIR} -P ${PROJECT_SOURCE_DIR}/tests/check_rooms.cmake
  COMMENT "Looking at what each room includes" VERBATIM)

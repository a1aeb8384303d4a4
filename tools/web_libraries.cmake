# Libraries that Debian ships as native code only, compiled from their sources (tools/web_sources).
set(SOURCES ${CMAKE_SOURCE_DIR}/build/sources)
enable_language(C)

# Dear ImGui.
set(IMGUI ${SOURCES}/imgui)
add_library(imgui STATIC ${IMGUI}/imgui.cpp ${IMGUI}/imgui_draw.cpp ${IMGUI}/imgui_tables.cpp
            ${IMGUI}/imgui_widgets.cpp ${IMGUI}/backends/imgui_impl_opengl3.cpp)
target_include_directories(imgui SYSTEM PUBLIC ${IMGUI})
target_compile_options(imgui PRIVATE -Oz -finline-functions)
target_compile_definitions(imgui PRIVATE IMGUI_IMPL_OPENGL_ES3 IMGUI_DISABLE_DEMO_WINDOWS
                           IMGUI_DISABLE_METRICS_WINDOW)

# zlib: packing and unpacking in memory, without its files.
list(APPEND Z_PARTS adler32 crc32 deflate inffast inflate inftrees trees zutil)
list(TRANSFORM Z_PARTS REPLACE "(.+)" "${SOURCES}/zlib/\\1.c")
add_library(z STATIC ${Z_PARTS})
target_include_directories(z SYSTEM PUBLIC ${SOURCES}/zlib)
target_compile_options(z PRIVATE -Os -finline-functions -w)

# libzip, in memory too: no encryption, deflate alone. Its build asks the machine the questions that
# are answered here, and makes its list of errors from its header in the same way; Debian's
# zipconf.h is the same on every machine.
set(ZIP ${CMAKE_BINARY_DIR}/zip)
foreach(there FILENO FSEEKO FTELLO LOCALTIME_R SNPRINTF STDBOOL_H STRCASECMP STRDUP STRINGS_H
        STRTOLL STRTOULL UNISTD_H)
    set(HAVE_${there} 1)
endforeach()
set(SIZEOF_OFF_T 8)
set(SIZEOF_SIZE_T 4)
configure_file(${SOURCES}/libzip/cmake-config.h.in ${ZIP}/config.h)
configure_file(/usr/include/zipconf.h ${ZIP}/zipconf.h COPYONLY)
file(STRINGS ${SOURCES}/libzip/lib/zip.h ERRORS REGEX "^#define ZIP_ER_[A-Z_]+ [0-9]+ ")
set(ERROR_WORDS "")
set(ERROR_TYPES "")
foreach(error IN LISTS ERRORS)
    string(REGEX MATCH "/\\* ([NSZ]) (.*) \\*/" error "${error}")
    string(APPEND ERROR_WORDS "\"${CMAKE_MATCH_2}\", ")
    string(APPEND ERROR_TYPES "${CMAKE_MATCH_1}, ")
endforeach()
file(WRITE ${ZIP}/zip_err_str.c "#include \"zipint.h\"
enum { N = ZIP_ET_NONE, S = ZIP_ET_SYS, Z = ZIP_ET_ZLIB };
const char *const _zip_err_str[] = {${ERROR_WORDS}};
const int _zip_nerr_str = sizeof _zip_err_str / sizeof _zip_err_str[0];
const int _zip_err_type[] = {${ERROR_TYPES}};
")
file(GLOB ZIP_PARTS ${SOURCES}/libzip/lib/zip_*.c)
list(FILTER ZIP_PARTS EXCLUDE REGEX "win32|uwp|crypto|aes|bzip2|xz")
add_library(zip STATIC ${ZIP_PARTS} ${ZIP}/zip_err_str.c)
target_include_directories(zip SYSTEM PUBLIC ${SOURCES}/libzip/lib ${ZIP})
target_compile_options(zip PRIVATE -Os -finline-functions -w)
target_link_libraries(zip PUBLIC z)

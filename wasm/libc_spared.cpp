// Two functions of the C library that the page need not carry, for the browser has them or nobody
// asks. The linker puts these in their place (--wrap, in CMakeLists.txt); together they spare a
// reader on a slow line a twentieth of the page.
#include <cstddef>
#include <cstring>

extern "C" {

// The page's own Number(): it rounds a decimal text to the nearest double, ties to even, as strtod
// does; out of range both give an infinity.
[[clang::import_module("env"), clang::import_name("number")]] double twinround_number(
    const char* text);

// Called on texts that a lexer has found to be one whole number: nothing is left behind its end.
double __wrap_strtod(const char* text, char** end) {
  if (end != nullptr) *end = const_cast<char*>(text) + std::strlen(text);
  return twinround_number(text);
}

// Called by nlohmann/json alone, to word the place of an error that our own reader words itself.
int __wrap_snprintf(char* text, std::size_t size, const char* /*format*/, ...) {
  if (size > 0) *text = '\0';
  return 0;
}

}  // extern "C"

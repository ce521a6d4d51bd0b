// What the WebAssembly module offers to a page. A text goes in through the room that the page asks
// for; what comes out stays where it is until the next call.
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "engine/page/page_engine.hpp"
#include "engine/report/json_writer.hpp"

#ifdef __wasm__
#define HEELRULE_EXPORT(name) extern "C" __attribute__((export_name(#name)))
#else
#define HEELRULE_EXPORT(name) extern "C"
#endif

namespace heelrule {
namespace {

// A module has one page, and a C function no other place to keep what it knows.
struct Desk {
  std::string in;
  std::string out;
  std::optional<PageEngine> engine;
};

Desk& desk() {
  static Desk one;
  return one;
}

const char* say(std::string words) {
  desk().out = std::move(words);
  return desk().out.data();
}

// Answers with what the engine makes of the text that came in.
const char* answer(std::string (PageEngine::*ask)(std::string_view) const) {
  return say(desk().engine ? ((*desk().engine).*ask)(desk().in) : std::string{});
}

}  // namespace
}  // namespace heelrule

/// Room for the next text, of `bytes` bytes.
HEELRULE_EXPORT(room) char* heelrule_room(std::size_t bytes) {
  heelrule::desk().in.assign(bytes, '\0');
  return heelrule::desk().in.data();
}

/// How long the last answer is, in bytes.
HEELRULE_EXPORT(length) std::size_t heelrule_length() { return heelrule::desk().out.size(); }

/// Takes the rules of the page. The answer is empty, or says what is wrong with them.
HEELRULE_EXPORT(open) const char* heelrule_open() {
  auto opened = heelrule::PageEngine::open(heelrule::desk().in);
  if (opened) {
    heelrule::desk().engine = *opened;
  }
  return heelrule::say(opened.problem().message);
}

/// Takes the reader's languages. The answer is empty.
HEELRULE_EXPORT(speak) const char* heelrule_speak() {
  if (heelrule::desk().engine) {
    heelrule::desk().engine->speak(heelrule::desk().in);
  }
  return heelrule::say({});
}

HEELRULE_EXPORT(questions) const char* heelrule_questions() {
  const auto& engine = heelrule::desk().engine;
  return heelrule::say(engine ? engine->questions() : std::string{});
}

HEELRULE_EXPORT(answers) const char* heelrule_answers() {
  return heelrule::answer(&heelrule::PageEngine::answers);
}

HEELRULE_EXPORT(verdict) const char* heelrule_verdict() {
  return heelrule::answer(&heelrule::PageEngine::verdict);
}

HEELRULE_EXPORT(file) const char* heelrule_file() {
  return heelrule::answer(&heelrule::PageEngine::file);
}

HEELRULE_EXPORT(opened) const char* heelrule_opened() {
  return heelrule::answer(&heelrule::PageEngine::opened);
}

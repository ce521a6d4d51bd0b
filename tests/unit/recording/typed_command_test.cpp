#include "engine/recording/typed_command.hpp"

#include <catch2/catch.hpp>

namespace heelrule {

TEST_CASE("a command is a word of its own") {
  CHECK(std::holds_alternative<GoOn>(typed_command("   ")));
  CHECK(std::holds_alternative<TellHow>(typed_command("?")));
  CHECK(std::holds_alternative<GoBack>(typed_command(" back ")));
  CHECK(std::holds_alternative<Review>(typed_command("review")));
  CHECK(std::holds_alternative<Finish>(typed_command("finish")));
  CHECK(std::get<Skip>(typed_command("skip")).reason.empty());
  CHECK(std::get<Skip>(typed_command("skip  the sole was wet")).reason == "the sole was wet");
  CHECK(std::get<GoTo>(typed_command("go wear")).place == "wear");
  CHECK(std::get<AnswerBoth>(typed_command("both firm")).words == "firm");
}

TEST_CASE("everything else is an answer") {
  for (const char* line : {"243 mm", "backless", "finished", "skipping", "goes", "no", "? no"}) {
    CAPTURE(line);
    CHECK(std::get<AnswerOne>(typed_command(line)).words == line);
  }
}

TEST_CASE("the help names every command") {
  for (const char* word : {"skip", "back", "go ", "review", "finish", "both", "?", "#", "!"}) {
    CHECK(command_help().find(word) != std::string_view::npos);
  }
}

}  // namespace heelrule

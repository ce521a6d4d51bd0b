// What a sheet asks, for a page to lay out.
#pragma once

#include <span>
#include <string>

#include "engine/scoring/program.hpp"

namespace heelrule {

/// One line of JSON, in bench order and in the reader's language:
///
///     {"rules":"everyday","title":…,"about":…,"edition":…,"languages":["en","es"],"language":"en",
///      "sections":[{"name":"feet_standing","title":…,"questions":[
///        {"name":"foot_length","safety":false,"ask":…,"how":…,"form":"measure",
///         "sides":["left","right"],"units":["mm","cm","in"],"usual":"80 mm to 340
///         mm","levels":[]},
///        {…,"form":"scale","sides":[""],"levels":[{"name":"soft","meaning":…},…]}]}],
///      "grades":[{"name":"sound","from":80},…],"fibres":["cotton",…],"cautions":[…]}
///
/// `rules` is what a record calls the rule set, `form` is as `in_words(AnswerForm)` names it,
/// `from` in points, and `language` empty where the rule set has plain texts alone.
std::string questions_json(const Program& program, std::span<const std::string> languages);

}  // namespace heelrule

#include "engine/reading/read_pass_sheet.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "engine/quantity/decimal.hpp"
#include "engine/quantity/nearest.hpp"
#include "engine/quantity/quantity.hpp"
#include "engine/quantity/trimmed.hpp"
#include "engine/reading/map_reader.hpp"
#include "engine/reading/read_document.hpp"

namespace heelrule {
namespace {

constexpr std::size_t most_students = 10'000;
constexpr std::string_view sheet_sample = "{S-01: {mark: 71, rating: pass}}";

class SheetReader {
 public:
  SheetReader(const Node& tree, Diagnostics& diagnostics)
      : tree_(tree),
        map_(tree, {tree.where.source, tree.where.begin, tree.where.begin}, "a pass sheet",
             diagnostics),
        diagnostics_(diagnostics) {}

  PassSheet read() {
    sheet_.title = map_.remark("title");
    if (const Node* most = map_.take("most")) {
      sheet_.most = number(*most, "most").value_or(sheet_.most);
      if (sheet_.most <= 0) {
        diagnostics_.error(most->where, "the highest mark lies above 0", "write `most: 100`");
      }
    }
    read_ratings();
    read_students();
    read_judges();
    read_acceptable();
    map_.finish();
    check_ways();
    return std::move(sheet_);
  }

 private:
  std::optional<double> number(const Node& node, std::string_view key) {
    const Located<std::string> text = read_plain_text(node, key, diagnostics_);
    if (text.value.empty()) {
      return std::nullopt;
    }
    const auto found = parse_decimal(text.value);
    if (!found) {
      diagnostics_.error(text.where, found.problem());
      return std::nullopt;
    }
    return scaled(*found);
  }

  // `60 %`, or 0.6.
  std::optional<double> share(std::string_view text, Span where) {
    std::optional<double> value;
    if (text.ends_with('%')) {
      const auto percent = parse_decimal(trimmed(text.substr(0, text.size() - 1)));
      value = percent ? std::optional(scaled(*percent) / 100) : std::nullopt;
    } else if (const auto plain = parse_decimal(text)) {
      value = scaled(*plain);
    }
    if (!value || *value < 0 || *value > 1) {
      diagnostics_.error(where, fmt::format("`{}` is no share from 0 to 1", text),
                         "write `0.6` or `60 %`");
      return std::nullopt;
    }
    return value;
  }

  bool expect(const Node& node, Node::Kind kind, std::string_view key, std::string_view hint) {
    if (node.kind == kind) {
      return true;
    }
    diagnostics_.error(
        node.where,
        fmt::format("`{}` is {}, and this is {}", key, in_words(kind), in_words(node.kind)),
        std::string(hint));
    return false;
  }

  void read_ratings() {
    const Node* node = map_.take("ratings");
    if (node != nullptr && expect(*node, Node::Kind::list, "ratings",
                                  "write them worst first: `[fail, borderline, pass]`")) {
      for (const Node& item : node->items) {
        const std::string name = read_plain_text(item, "ratings", diagnostics_).value;
        if (std::find(sheet_.ratings.begin(), sheet_.ratings.end(), name) != sheet_.ratings.end()) {
          diagnostics_.error(item.where, fmt::format("the rating `{}` comes a second time", name),
                             "write each rating once");
        }
        sheet_.ratings.push_back(name);
      }
    }
    const Located<std::string> borderline = map_.text("borderline");
    if (sheet_.ratings.empty()) {
      return;
    }
    if (borderline.value.empty()) {
      diagnostics_.error(node->where, "it is not said which of these ratings is the border",
                         "write `borderline:` with the one that is neither pass nor fail");
      return;
    }
    sheet_.borderline = rating(borderline).value_or(0);
  }

  std::optional<std::size_t> rating(const Located<std::string>& name) {
    const auto found = std::find(sheet_.ratings.begin(), sheet_.ratings.end(), name.value);
    if (found != sheet_.ratings.end()) {
      return static_cast<std::size_t>(found - sheet_.ratings.begin());
    }
    Nearest nearest(name.value);
    for (const std::string& known : sheet_.ratings) {
      nearest.offer(known);
    }
    diagnostics_.error(name.where, fmt::format("`{}` is none of the `ratings`", name.value),
                       nearest.found()
                           ? nearest.question()
                           : fmt::format("they are `{}`", fmt::join(sheet_.ratings, "`, `")));
    return std::nullopt;
  }

  void read_students() {
    const Node* node = map_.take("students");
    if (node == nullptr || !expect(*node, Node::Kind::map, "students",
                                   fmt::format("write `students: {}`", sheet_sample))) {
      return;
    }
    if (node->entries.size() > most_students) {
      diagnostics_.error(node->where, fmt::format("there are more than {} students", most_students),
                         "take fewer at a time");
      return;
    }
    for (const Entry& entry : node->entries) {
      MapReader student(entry.value, entry.key.where, "a student", diagnostics_);
      MarkedStudent read{entry.key.value, 0, std::nullopt};
      if (const Node* mark = student.require("mark", "71.5")) {
        read.mark = number(*mark, "mark").value_or(0);
        if (read.mark < 0 || read.mark > sheet_.most) {
          diagnostics_.error(
              mark->where,
              fmt::format("this mark does not lie from 0 to {}", shortest(sheet_.most)),
              "correct it, or say with `most` what the highest mark is");
        }
      }
      const Located<std::string> rated = student.text("rating");
      if (!rated.value.empty()) {
        read.rating = rating(rated);
      }
      student.finish();
      sheet_.students.push_back(std::move(read));
    }
  }

  void read_judges() {
    const Node* node = map_.take("judges");
    if (node == nullptr ||
        !expect(*node, Node::Kind::map, "judges", "write `T-01: [60 %, 70 %]` for each judge")) {
      return;
    }
    for (const Entry& entry : node->entries) {
      if (!expect(entry.value, Node::Kind::list, entry.key.value,
                  "write a share for each task: `[60 %, 70 %]`")) {
        continue;
      }
      PassJudge judge{entry.key.value, {}};
      for (const Node& item : entry.value.items) {
        const Located<std::string> text = read_plain_text(item, entry.key.value, diagnostics_);
        judge.chances.push_back(share(text.value, text.where).value_or(0));
      }
      if (!sheet_.judges.empty() && judge.chances.size() != sheet_.judges.front().chances.size()) {
        diagnostics_.error(
            entry.value.where,
            fmt::format("`{}` judged {} tasks, and `{}` {}", judge.name, judge.chances.size(),
                        sheet_.judges.front().name, sheet_.judges.front().chances.size()),
            "every judge judges every task");
      }
      if (judge.chances.empty()) {
        diagnostics_.error(entry.value.where, fmt::format("`{}` judged no task", judge.name),
                           "write a share for each task: `[60 %, 70 %]`");
      }
      sheet_.judges.push_back(std::move(judge));
    }
  }

  // `50 .. 65`, each end read by `one`.
  template <class One>
  bool range(MapReader& map, std::string_view key, std::string_view sample, double& from,
             double& to, const One& one) {
    const Located<std::string> text = map.required_text(key, sample);
    if (text.value.empty()) {
      return false;
    }
    const std::size_t dots = text.value.find("..");
    if (dots == std::string::npos) {
      diagnostics_.error(text.where, fmt::format("`{}` is no range", text.value),
                         fmt::format("write `{}`", sample));
      return false;
    }
    const auto low = one(trimmed(std::string_view(text.value).substr(0, dots)), text.where);
    const auto high = one(trimmed(std::string_view(text.value).substr(dots + 2)), text.where);
    if (!low || !high) {
      return false;
    }
    if (!(*low < *high)) {
      diagnostics_.error(text.where, fmt::format("the range `{}` does not rise", text.value),
                         fmt::format("write `{}`", sample));
      return false;
    }
    from = *low;
    to = *high;
    return true;
  }

  void read_acceptable() {
    const Node* node = map_.take("acceptable");
    if (node == nullptr) {
      return;
    }
    MapReader map(*node, node->where, "an acceptable range", diagnostics_);
    AcceptablePass range_of;
    const auto mark = [&](std::string_view text, Span where) -> std::optional<double> {
      const auto found = parse_decimal(text);
      if (!found) {
        diagnostics_.error(where, found.problem());
        return std::nullopt;
      }
      return scaled(*found);
    };
    const bool marks =
        range(map, "marks", "50 .. 65", range_of.least_mark, range_of.most_mark, mark);
    const bool fails = range(map, "fails", "5 % .. 40 %", range_of.least_fails, range_of.most_fails,
                             [&](std::string_view text, Span where) { return share(text, where); });
    map.finish();
    if (marks && fails) {
      sheet_.acceptable = range_of;
    }
  }

  void check_ways() {
    const bool rated = std::any_of(sheet_.students.begin(), sheet_.students.end(),
                                   [](const MarkedStudent& one) { return one.rating.has_value(); });
    if (sheet_.acceptable && sheet_.students.empty()) {
      diagnostics_.error(tree_.where, "an acceptable range needs the marks of students",
                         fmt::format("write `students: {}`", sheet_sample));
    }
    if (!diagnostics_.has_errors() && !rated && sheet_.judges.empty() && !sheet_.acceptable) {
      diagnostics_.error({tree_.where.source, tree_.where.begin, tree_.where.begin},
                         "nothing in this pass sheet leads to a pass mark",
                         "give students with a `rating`, `judges`, or an `acceptable` range");
    }
  }

  const Node& tree_;
  MapReader map_;
  Diagnostics& diagnostics_;
  PassSheet sheet_;
};

}  // namespace

Checked<PassSheet> load_pass_sheet(const Sources& sources, std::uint32_t source) {
  Diagnostics diagnostics;
  const auto tree = read_document(sources, source, diagnostics);
  if (!tree) {
    return Checked<PassSheet>(std::move(diagnostics));
  }
  PassSheet sheet = SheetReader(*tree, diagnostics).read();
  return {std::move(sheet), std::move(diagnostics)};
}

}  // namespace heelrule

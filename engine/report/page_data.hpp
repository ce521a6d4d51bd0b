// What a page template is filled with.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace heelrule {

/// Names and what stands for them in a template:
///
///     {{name}}                      words, or markup
///     {{#name}} … {{/name}}         once where `name` is there; for each entry of a list
///     {{^name}} … {{/name}}         where it is not there
///
/// A name that is not found in an entry of a list is looked for around it. Words are escaped when
/// they are put in, so nothing that a template does can bring them back to life: two or three
/// braces, the same is written.
class PageData {
 public:
  struct Words {
    std::string escaped;
  };
  struct Markup {
    std::string markup;
  };
  using List = std::vector<PageData>;
  struct Entry {
    std::string name;
    std::variant<Words, Markup, List> value;
  };

  /// Words of people; left out where they are empty, so that `{{#name}}` asks whether there are
  /// any.
  void words(std::string_view name, std::string_view text);

  /// HTML or SVG that was made by us; left out where it is empty.
  void markup(std::string_view name, std::string markup);

  /// Something that is so; left out where it is not.
  void fact(std::string_view name, bool is_so);

  /// Appends an entry to a list, which begins with its first entry. The reference holds until the
  /// next call.
  PageData& add(std::string_view list);

  /// A list of words alone: each entry has them as `words`.
  void each(std::string_view list, const std::vector<std::string>& texts);

  const std::vector<Entry>& entries() const { return entries_; }

 private:
  std::vector<Entry> entries_;
};

}  // namespace heelrule

#include "engine/report/fill_template.hpp"

#include <fmt/format.h>

#include <kainjow/mustache.hpp>
#include <utility>

namespace heelrule {
namespace {

using kainjow::mustache::data;
using Context = kainjow::mustache::context<std::string>;

data as_data(const PageData& page) {
  data object(data::type::object);
  for (const PageData::Entry& entry : page.entries()) {
    if (const auto* words = std::get_if<PageData::Words>(&entry.value)) {
      object.set(entry.name, words->escaped);
    } else if (const auto* markup = std::get_if<PageData::Markup>(&entry.value)) {
      object.set(entry.name, markup->markup);
    } else {
      data list(data::type::list);
      for (const PageData& item : std::get<PageData::List>(entry.value)) {
        list.push_back(as_data(item));
      }
      object.set(entry.name, list);
    }
  }
  return object;
}

// Finds names as the library does, and finds none any more once the page has grown too large: so
// lists inside themselves come to an end. An entry of a list costs the whole template, which is
// the most that it can write by itself.
class BoundedContext : public Context {
 public:
  BoundedContext(const data* root, const data* parts, std::size_t template_bytes)
      : Context(root), parts_(parts), template_bytes_(template_bytes) {}

  void push(const data* entry) override {
    spend(template_bytes_);
    Context::push(entry);
  }

  const data* get(const std::string& name) const override {
    const data* found = is_spent() ? nullptr : Context::get(name);
    if (found != nullptr && found->is_string()) {
      spend(found->string_value().size());
    }
    return found;
  }

  const data* get_partial(const std::string& name) const override { return parts_->get(name); }

  bool is_spent() const { return spent_ > most_page_bytes; }

 private:
  void spend(std::size_t bytes) const { spent_ += bytes; }

  const data* parts_;
  std::size_t template_bytes_;
  mutable std::size_t spent_ = 0;
};

// What the library writes to.
struct Written {
  std::string text;
  Written& operator<<(const std::string& more) {
    text += more;
    return *this;
  }
};

}  // namespace

Parsed<std::string> fill_template(std::string_view text, const PageData& data,
                                  std::initializer_list<TemplatePart> parts) {
  kainjow::mustache::mustache filled{std::string(text)};
  if (!filled.is_valid()) {
    return Problem{"the template cannot be read: " + filled.error_message(), ""};
  }
  filled.set_custom_escape([](const std::string& escaped) { return escaped; });
  const kainjow::mustache::data root = as_data(data);
  kainjow::mustache::data known(kainjow::mustache::data::type::object);
  for (const TemplatePart& part : parts) {
    known.set(std::string(part.name), std::string(part.text));
  }
  BoundedContext context(&root, &known, text.size());
  Written written;
  filled.render(context, written);
  if (context.is_spent()) {
    return Problem{
        fmt::format("the template makes a page of more than {} MiB", most_page_bytes >> 20U),
        "do not repeat a list inside another that has nothing to do with it"};
  }
  return std::move(written.text);
}

}  // namespace heelrule

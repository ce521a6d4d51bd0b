#include "engine/reading/usual_field.hpp"

#include <fmt/format.h>

namespace heelrule {

UsualField::UsualField(std::string_view trait, bool has_sides, Spacing spacing) {
  const std::string_view blank = spacing == Spacing::none ? "" : " ";
  before_ = fmt::format(R"("{}":{}{})", trait, blank, has_sides ? "" : "\"");
  if (has_sides) {
    before_ += fmt::format(R"({{"left":{}")", blank);
    between_ = fmt::format(R"(,{0}"right":{0}")", blank);
  }
}

}  // namespace heelrule

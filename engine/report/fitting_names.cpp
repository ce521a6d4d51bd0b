#include "engine/report/fitting_names.hpp"

namespace heelrule {

std::string_view name_of(Lengthening lengthening) {
  switch (lengthening) {
    case Lengthening::misread:
      return "misread";
    case Lengthening::as_expected:
      return "as expected";
    case Lengthening::more_than_half:
      return "more than half a size";
    case Lengthening::whole_size:
      return "a whole size or more";
  }
  return "";
}

std::string_view name_of(Remedy remedy) {
  switch (remedy) {
    case Remedy::one_pair:
      return "one pair";
    case Remedy::fill:
      return "fill";
    case Remedy::two_pairs:
      return "two pairs";
  }
  return "";
}

std::string_view name_of(SockFit fit) {
  switch (fit) {
    case SockFit::right:
      return "right";
    case SockFit::too_short:
      return "too short";
    case SockFit::too_long:
      return "too long";
  }
  return "";
}

std::string_view name_of(Cramping cramping) {
  switch (cramping) {
    case Cramping::free:
      return "free";
    case Cramping::tight:
      return "tight";
    case Cramping::cramped:
      return "cramped";
  }
  return "";
}

}  // namespace heelrule

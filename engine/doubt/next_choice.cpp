#include "engine/doubt/next_choice.hpp"

#include <numeric>

namespace heelrule {

std::vector<std::size_t> first_choice(std::size_t size) {
  std::vector<std::size_t> chosen(size);
  std::iota(chosen.begin(), chosen.end(), std::size_t{0});
  return chosen;
}

bool next_choice(std::vector<std::size_t>& chosen, std::size_t count) {
  // The last index that can still rise does, and those after it follow close behind.
  std::size_t rising = chosen.size();
  while (rising > 0 && chosen[rising - 1] == count - chosen.size() + rising - 1) {
    --rising;
  }
  if (rising == 0) {
    return false;
  }
  std::iota(chosen.begin() + static_cast<std::ptrdiff_t>(rising) - 1, chosen.end(),
            chosen[rising - 1] + 1);
  return true;
}

}  // namespace heelrule

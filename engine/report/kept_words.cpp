#include "engine/report/kept_words.hpp"

namespace heelrule {
namespace {

// What is kept at most, in bytes, before it is forgotten. A school's readings come in steps of half
// a millimetre, and take a small part of it.
constexpr std::size_t most_kept = std::size_t{4} << 20U;

}  // namespace

void KeptWords::begin() {
  for (std::vector<PaddedView>& all : told_) {
    all.clear();
  }
  once_.clear();
  std::size_t size = size_of_words_;
  for (const Cases& cases : cases_) {
    size += cases.places.size() * sizeof(Kept);
  }
  if (size > most_kept) {
    cases_.assign(cases_.size(), {});
    words_.clear();
    size_of_words_ = 0;
  }
}

void KeptWords::append(std::size_t row, GrowingText& line) const {
  for (const PaddedView entries : told_[row]) {
    line.put(entries);
  }
  if (has(row)) {
    line.drop_last();  // the comma behind the last one
  }
}

PaddedView KeptWords::keep(Cases& cases, const Met& met, std::string words) {
  const auto [kept, is_new] = words_.emplace(std::move(words));
  const PaddedView view = kept->view();
  size_of_words_ += is_new ? sizeof(PaddedText) + view.size : 0;
  if (++cases.count * 2 > cases.places.size()) {
    cases.make_room();
  }
  cases.places[cases.place(met)] = {met.of.first, met.of.second, met.of.open, view.size, view.data};
  return view;
}

void KeptWords::Cases::make_room() {
  std::vector<Kept> before(places.size() * 2);
  before.swap(places);
  ++bits;
  for (const Kept& one : before) {
    if (one.data != nullptr) {
      const WordCase of{one.first, one.second, one.open};
      places[place({of, mixed(of), 0})] = one;
    }
  }
}

}  // namespace heelrule

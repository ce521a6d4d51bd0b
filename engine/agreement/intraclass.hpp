// Intraclass correlation: how much of the spread of ratings is spread of the subjects.
#pragma once

#include <array>
#include <cstdint>

#include "engine/agreement/mean_squares.hpp"

namespace heelrule {

/// The six forms of Shrout and Fleiss 1979 (Psychol Bull 86:420-428), by the model and by whether
/// one rating counts or the mean of all observers.
enum class IntraclassForm : std::uint8_t {
  one_way_single,      ///< ICC(1,1): each subject was rated by other people
  agreement_single,    ///< ICC(2,1): two-way, random observers; differences between them count
  consistency_single,  ///< ICC(3,1): two-way, these observers; differences between them do not
  one_way_mean,        ///< ICC(1,k)
  agreement_mean,      ///< ICC(2,k)
  consistency_mean,    ///< ICC(3,k), which is Cronbach's alpha with observers as items
};

constexpr std::array<IntraclassForm, 6> intraclass_forms{
    IntraclassForm::one_way_single,     IntraclassForm::agreement_single,
    IntraclassForm::consistency_single, IntraclassForm::one_way_mean,
    IntraclassForm::agreement_mean,     IntraclassForm::consistency_mean};

/// The coefficient with its interval from the F distribution, as in that paper; for ICC(2,k) the
/// limits of ICC(2,1) are stepped up, as there (McGraw and Wong 1996 differ in the second digit).
/// There is no standard error. Unknown where all ratings are the same; of means also where
/// ratings of one subject differ so much more than subjects that the correlation of their means has
/// no lower end. May lie below 0: subjects
/// are then more alike than ratings of one subject.
Estimate intraclass(const MeanSquares& squares, IntraclassForm form);

}  // namespace heelrule

#include "engine/agreement/distribution.hpp"

#include <boost/math/distributions/beta.hpp>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/fisher_f.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

namespace heelrule {
namespace {

namespace math = boost::math;
namespace policies = boost::math::policies;

// The engine throws nothing: what the library cannot work out is not-a-number or infinite.
using Quiet = policies::policy<
    policies::domain_error<policies::ignore_error>, policies::pole_error<policies::ignore_error>,
    policies::overflow_error<policies::ignore_error>,
    policies::underflow_error<policies::ignore_error>,
    policies::denorm_error<policies::ignore_error>,
    policies::rounding_error<policies::ignore_error>,
    policies::evaluation_error<policies::ignore_error>,
    policies::indeterminate_result_error<policies::ignore_error>, policies::promote_double<false>>;

using Normal = math::normal_distribution<double, Quiet>;
using Student = math::students_t_distribution<double, Quiet>;
using ChiSquared = math::chi_squared_distribution<double, Quiet>;
using FisherF = math::fisher_f_distribution<double, Quiet>;
using Beta = math::beta_distribution<double, Quiet>;

}  // namespace

double normal_quantile(double p) { return quantile(Normal(), p); }

double student_quantile(double p, double freedom) { return quantile(Student(freedom), p); }

double chi_squared_quantile(double p, double freedom) { return quantile(ChiSquared(freedom), p); }

double f_quantile(double p, double above_freedom, double below_freedom) {
  return quantile(FisherF(above_freedom, below_freedom), p);
}

double beta_quantile(double p, double first, double second) {
  return quantile(Beta(first, second), p);
}

double normal_share_above(double value) { return cdf(complement(Normal(), value)); }

double student_share_above(double value, double freedom) {
  return cdf(complement(Student(freedom), value));
}

double f_share_above(double value, double above_freedom, double below_freedom) {
  return cdf(complement(FisherF(above_freedom, below_freedom), value));
}

}  // namespace heelrule

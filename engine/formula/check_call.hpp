// What a call of a function comes to.
#pragma once

#include <span>

#include "engine/formula/expression_builder.hpp"
#include "engine/formula/function.hpp"
#include "engine/formula/syntax.hpp"

namespace heelrule {

/// Checks kinds, units and sides of the values that `function` is given, and adds its steps.
/// `values` are the parts of the call that were worked out: all, or only the first where a function
/// takes a name beside it (`share(fibres, cotton)`). Precondition: the call has as many parts as
/// the function takes.
Found check_call(const Function& function, const Syntax& call, std::span<const Part> values,
                 ExpressionBuilder& builder);

}  // namespace heelrule

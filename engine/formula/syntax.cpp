#include "engine/formula/syntax.hpp"

#include <fmt/format.h>

#include <array>
#include <utility>

#include "engine/formula/token.hpp"

namespace heelrule {
namespace {

constexpr std::size_t deepest = 60;
constexpr std::size_t most_parts = 500;

struct Sign {
  std::string_view text;
  Form form;
};

constexpr std::array<Sign, 4> comparisons{
    {{"<", Form::less}, {"<=", Form::at_most}, {">", Form::more}, {">=", Form::at_least}}};

class Parser {
 public:
  Parser(std::vector<Token> tokens, Diagnostics& diagnostics)
      : tokens_(std::move(tokens)), diagnostics_(diagnostics) {}

  std::optional<Syntax> parse() {
    Syntax whole = expression();
    if (ok_ && current().kind != TokenKind::end) {
      fail(current().where, "the formula goes on where it should end",
           "put a sign or `and`/`or` between the two parts");
    }
    return ok_ ? std::optional(std::move(whole)) : std::nullopt;
  }

 private:
  const Token& current() const { return tokens_[at_]; }

  bool at_word(std::string_view word) const {
    return current().kind == TokenKind::word && current().text == word;
  }

  bool take_word(std::string_view word) { return at_word(word) && advance(); }

  bool take_sign(std::string_view sign) {
    return current().kind == TokenKind::sign && current().text == sign && advance();
  }

  bool advance() {
    ++at_;
    return true;
  }

  void fail(Span where, std::string message, std::string hint) {
    if (ok_) {
      diagnostics_.error(where, std::move(message), std::move(hint));
      ok_ = false;
    }
  }

  Syntax node(Form form, std::vector<Syntax> parts, Span where) {
    if (++parts_ > most_parts) {
      fail(where, fmt::format("the formula has more than {} parts", most_parts),
           "split it into derived traits");
    }
    return {form, where, {}, {}, std::move(parts)};
  }

  static Span joined(Span first, Span last) {
    return {first.source, first.begin, last.end > first.begin ? last.end : first.end};
  }

  Syntax pair(Form form, Syntax left, Syntax right) {
    const Span where = joined(left.where, right.where);
    std::vector<Syntax> parts;
    parts.push_back(std::move(left));
    parts.push_back(std::move(right));
    return node(form, std::move(parts), where);
  }

  Syntax expression() {
    if (++depth_ > deepest) {
      fail(current().where, fmt::format("the formula is nested more than {} deep", deepest),
           "split it into derived traits");
    }
    Syntax result;
    if (ok_) {
      result = at_word("if") ? conditional() : disjunction();
    }
    --depth_;
    return result;
  }

  Syntax conditional() {
    const Span start = current().where;
    advance();
    std::vector<Syntax> parts;
    parts.push_back(expression());
    if (ok_ && !take_word("then")) {
      fail(current().where, "`then` is due here", "write `if … then … else …`");
    }
    parts.push_back(ok_ ? expression() : Syntax{});
    if (ok_ && !take_word("else")) {
      fail(current().where, "`else` is due here", "write `if … then … else …`");
    }
    parts.push_back(ok_ ? expression() : Syntax{});
    const Span where = joined(start, parts.back().where);
    return node(Form::choose, std::move(parts), where);
  }

  Syntax disjunction() {
    Syntax left = conjunction();
    while (ok_ && take_word("or")) {
      left = pair(Form::logical_or, std::move(left), conjunction());
    }
    return left;
  }

  Syntax conjunction() {
    Syntax left = negation();
    while (ok_ && take_word("and")) {
      left = pair(Form::logical_and, std::move(left), negation());
    }
    return left;
  }

  Syntax negation() { return prefixed(Form::logical_not, &Parser::negation, &Parser::comparison); }

  Syntax signed_value() { return prefixed(Form::negate, &Parser::signed_value, &Parser::primary); }

  // `not a` and `-a` alike: the sign, then the same again, or else what binds tighter.
  Syntax prefixed(Form form, Syntax (Parser::*again)(), Syntax (Parser::*tighter)()) {
    const Span start = current().where;
    const bool taken = form == Form::negate ? take_sign("-") : take_word("not");
    if (!taken) {
      return (this->*tighter)();
    }
    if (++depth_ > deepest) {
      fail(start, fmt::format("the formula is nested more than {} deep", deepest),
           "split it into derived traits");
      return {};
    }
    std::vector<Syntax> parts;
    parts.push_back((this->*again)());
    --depth_;
    const Span where = joined(start, parts.front().where);
    return node(form, std::move(parts), where);
  }

  std::optional<Form> take_comparison() {
    for (const Sign& sign : comparisons) {
      if (take_sign(sign.text)) {
        return sign.form;
      }
    }
    if (take_word("is")) {
      return take_word("not") ? Form::is_not : Form::is;
    }
    return std::nullopt;
  }

  Syntax comparison() {
    Syntax left = sum();
    const auto form = ok_ ? take_comparison() : std::nullopt;
    if (!form) {
      return left;
    }
    Syntax whole = pair(*form, std::move(left), sum());
    const Span next = current().where;
    if (ok_ && take_comparison()) {
      fail(next, "a comparison cannot be compared again", "join two comparisons with `and`");
    }
    return whole;
  }

  Syntax sum() {
    Syntax left = product();
    while (ok_) {
      if (take_sign("+")) {
        left = pair(Form::add, std::move(left), product());
      } else if (take_sign("-")) {
        left = pair(Form::subtract, std::move(left), product());
      } else {
        break;
      }
    }
    return left;
  }

  Syntax product() {
    Syntax left = signed_value();
    while (ok_) {
      if (take_sign("*")) {
        left = pair(Form::multiply, std::move(left), signed_value());
      } else if (take_sign("/")) {
        left = pair(Form::divide, std::move(left), signed_value());
      } else {
        break;
      }
    }
    return left;
  }

  Syntax primary() {
    const Token token = current();
    if (take_sign("(")) {
      Syntax inner = expression();
      close();
      return inner;
    }
    Syntax leaf = node(Form::value, {}, token.where);
    if (token.kind == TokenKind::value) {
      leaf.value = token.value;
    } else if (token.kind == TokenKind::quoted) {
      leaf.form = Form::quoted;
      leaf.name = token.text;
    } else if (at_word("yes") || at_word("no")) {
      leaf.form = at_word("yes") ? Form::yes : Form::no;
    } else if (token.kind == TokenKind::word && !is_keyword(token.text)) {
      leaf.form = Form::name;
      leaf.name = token.text;
    } else {
      fail(token.where, "a value, a trait or `(` is due here",
           "a formula looks like `insole_length - foot_length`");
      return leaf;
    }
    advance();
    if (leaf.form == Form::name && take_sign("(")) {
      leaf.form = Form::call;
      arguments(leaf);
    }
    return leaf;
  }

  static bool is_keyword(std::string_view word) {
    constexpr std::array<std::string_view, 7> words{"and", "or", "not", "is", "if", "then", "else"};
    for (const std::string_view keyword : words) {
      if (keyword == word) {
        return true;
      }
    }
    return false;
  }

  void arguments(Syntax& call) {
    do {
      call.parts.push_back(expression());
    } while (ok_ && take_sign(","));
    call.where = joined(call.where, current().where);
    close();
  }

  void close() {
    if (ok_ && !take_sign(")")) {
      fail(current().where, "`)` is due here", "close the bracket that was opened");
    }
  }

  std::vector<Token> tokens_;
  Diagnostics& diagnostics_;
  std::size_t at_ = 0;
  std::size_t depth_ = 0;
  std::size_t parts_ = 0;
  bool ok_ = true;
};

}  // namespace

std::optional<Syntax> parse_formula(const Located<std::string>& formula, Diagnostics& diagnostics) {
  auto tokens = split_formula(formula, diagnostics);
  if (!tokens) {
    return std::nullopt;
  }
  return Parser(std::move(*tokens), diagnostics).parse();
}

}  // namespace heelrule

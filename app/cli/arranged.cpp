#include "cli/arranged.h"

#include "cli/why.h"

namespace oddglass::cli {

void addArranged(Json& json, const stats::ArrangedP& p) {
  json["p_exact"] = numberOrNull(p.exact);
  json["p_permutation"] = p.drawn ? numberOrNull(p.drawn->pValue) : Json();
  json["permutation_error"] = p.drawn ? numberOrNull(p.drawn->error) : Json();
}

std::string whyOf(const std::optional<stats::Reason>& reason, const stats::ArrangedP& p) {
  if (reason) return why(*reason);
  if (p.exact) return "every arrangement was counted, so none was drawn";
  if (p.drawn) return "too many arrangements to count, so 100,000 were drawn";
  return why(stats::Reason::tooLarge);
}

}  // namespace oddglass::cli

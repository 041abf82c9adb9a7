#pragma once

#include "cli/answer.h"
#include "insight/card.h"
#include "store/store.h"

namespace oddglass::cli {

/// What everybody has shown to notice, words under the names they have in this store's list.
struct StoreNoticing {
  KnownDifferences known;
  insight::Meaning meaning;
  std::vector<insight::Noticed> all;
};
StoreNoticing noticingIn(store::Store& store);

/// What one person has shown to notice, as JSON.
Json noticedJson(const KnownDifferences& known, const insight::Noticed& noticed);

/// How steady somebody's answers to one drink are, as JSON.
Json repeatsJson(const insight::Repeats& repeats);

}  // namespace oddglass::cli

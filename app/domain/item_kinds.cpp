#include "domain/item_kinds.h"

namespace oddglass {

bool hasPoints(ItemKind kind) {
  return kind == ItemKind::liking || kind == ItemKind::line || kind == ItemKind::magnitude || kind == ItemKind::distance;
}

std::vector<Part> partsOf(ItemKind kind) {
  switch (kind) {
    case ItemKind::rank:
    case ItemKind::split:
    case ItemKind::sureness: return {Part::last};
    case ItemKind::words: return {Part::main, Part::look, Part::smell, Part::late, Part::last};
    default: return {Part::main, Part::look, Part::smell, Part::late};
  }
}

bool takesWord(ItemKind kind) { return answerForm(kind).needsWord || kind == ItemKind::liking || kind == ItemKind::rank; }

}  // namespace oddglass

// The right way; it must compile, so that its neighbours fail for their own reason and not for a wrong path.
#include "blinding/key.h"

using namespace oddglass;
using namespace oddglass::blinding;

Slot lookUp(SealedKey key, const Logged& entry, Code code) {
  SealedKey moved = std::move(key);
  const OpenedKey opened = open(std::move(moved), entry);
  return opened.slotOf(code);
}

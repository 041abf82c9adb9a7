#include "blinding/key.h"

oddglass::blinding::OpenedKey make(oddglass::blinding::KeyContents contents) { return oddglass::blinding::OpenedKey(std::move(contents)); }

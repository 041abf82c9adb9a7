#pragma once

// Marks a sentence for lupdate without Qt: it looks for this name and takes the context from the first argument.
// For .cpp files of this room only.
#ifndef QT_TRANSLATE_NOOP
#define QT_TRANSLATE_NOOP(context, text) text
#endif

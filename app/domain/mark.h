#pragma once

// Marks a sentence for lupdate without Qt: it looks for this name and takes the context from the first argument.
// For .cpp files only: those of the room words, and the tables of domain whose texts words says.
#ifndef QT_TRANSLATE_NOOP
#define QT_TRANSLATE_NOOP(context, text) text
#endif

#pragma once

#include "print/paper_size.h"
#include "report/document.h"

#include <string>

namespace oddglass::print {

/// The report as the bytes of a PDF: the document that the HTML is made of, with the same sentences in the same order, figures as vectors with their tables
/// behind them. The maker's part begins a page of its own. A document for the room holds no person.
std::string reportPdf(const words::Voice& voice, const report::Document& document, PaperSize size);

}  // namespace oddglass::print

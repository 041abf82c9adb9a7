#include "domain/vocabulary_rows.h"

#include "domain/mark.h"

namespace oddglass {

// Families of faults: air and age, sulphur, spoilage, cellar and foreign matter.
std::span<const WordRow> wordsOfFaults() {
  using enum WordClass;
  using enum Leaning;
  using namespace drinks;
  static constexpr WordRow rows[] = {
      {"8b7c0787f8a5adde40ef507f1639b979", QT_TRANSLATE_NOOP("words", "wet cardboard"), QT_TRANSLATE_NOOP("words", "cardboard; papery; paper"),
       air, all, QT_TRANSLATE_NOOP("words", "trans-2-nonenal"), fault, Care::none},
      {"0532726a653fc704f63bff566842a622", QT_TRANSLATE_NOOP("words", "sherry"), QT_TRANSLATE_NOOP("words", "sherry-like"),
       air, all, "", either, Care::none},
      {"4d37de6ba9f6cb6af03faf810ca7c291", QT_TRANSLATE_NOOP("words", "bruised apple"), QT_TRANSLATE_NOOP("words", "brown apple; cut apple"),
       air, mead | cider | wine, QT_TRANSLATE_NOOP("words", "acetaldehyde"), fault, Care::sulphite},
      {"c63a66223912afdc1d302cb2b6826666", QT_TRANSLATE_NOOP("words", "stewed fruit"), QT_TRANSLATE_NOOP("words", "jam; cooked fruit"),
       air, all, "", either, Care::none},
      {"676176dd794adfd02670d808e87f1c2e", QT_TRANSLATE_NOOP("words", "skunk"), QT_TRANSLATE_NOOP("words", "skunky; lightstruck"),
       air, beer, QT_TRANSLATE_NOOP("words", "3-methyl-2-butene-1-thiol"), fault, Care::none},
      {"ea70490ecfaa2577e6eefe3942afceda", QT_TRANSLATE_NOOP("words", "catty"), QT_TRANSLATE_NOOP("words", "tomcat; blackcurrant leaf"),
       air, beer | wine, "", either, Care::none},
      {"de70166fb7c62c5bcfd172d86b7536b7", QT_TRANSLATE_NOOP("words", "faded"), QT_TRANSLATE_NOOP("words", "washed out; dull"),
       air, all, "", fault, Care::none},
      {"f1808ef8bd6f67afbcfc9a3f476e9959", QT_TRANSLATE_NOOP("words", "petrol"), QT_TRANSLATE_NOOP("words", "kerosene; paraffin"),
       air, wine, QT_TRANSLATE_NOOP("words", "1,1,6-trimethyl-1,2-dihydronaphthalene (TDN)"), either, Care::doNotSwallow},
      {"f44ef087b137e5232267e072be8765d4", QT_TRANSLATE_NOOP("words", "rotten egg"), QT_TRANSLATE_NOOP("words", "eggy; hydrogen sulphide"),
       sulphur, all, QT_TRANSLATE_NOOP("words", "hydrogen sulphide"), fault, Care::none},
      {"97e1fffed66bd5ebd7b38a3f6dfe90d7", QT_TRANSLATE_NOOP("words", "struck match"), QT_TRANSLATE_NOOP("words", "burnt match; gunflint"),
       sulphur, all, "", either, Care::none},
      {"65e7ee3dc0921ac91593b377a0cdf6b4", QT_TRANSLATE_NOOP("words", "sulphite sting"), QT_TRANSLATE_NOOP("words", "sulphur dioxide; stinging nose"),
       sulphur, mead | cider | wine, QT_TRANSLATE_NOOP("words", "sulphur dioxide"), fault, Care::sulphite},
      {"f2f2268bbf677446e461aa37708fb7d2", QT_TRANSLATE_NOOP("words", "cooked corn"), QT_TRANSLATE_NOOP("words", "sweetcorn; creamed corn; DMS"),
       sulphur, beer, QT_TRANSLATE_NOOP("words", "dimethyl sulphide (DMS)"), either, Care::none},
      {"3b94c02f3a00b2024f9415d4b1aa64b1", QT_TRANSLATE_NOOP("words", "cooked cabbage"), QT_TRANSLATE_NOOP("words", "cabbage; stewed greens"),
       sulphur, all, QT_TRANSLATE_NOOP("words", "dimethyl sulphide (DMS) in beer"), fault, Care::none},
      {"fa3defeb6dcf0d7ff49507bfee0e4f91", QT_TRANSLATE_NOOP("words", "onion"), QT_TRANSLATE_NOOP("words", "garlic; leek"),
       sulphur, all, QT_TRANSLATE_NOOP("words", "mercaptans"), fault, Care::none},
      {"68b67ac654449963056cc45deb53bf77", QT_TRANSLATE_NOOP("words", "rubber"), QT_TRANSLATE_NOOP("words", "burnt rubber; tyre"),
       sulphur, all, QT_TRANSLATE_NOOP("words", "mercaptans"), fault, Care::none},
      {"748f3adee6cf10505c7cc7d580cb16e3", QT_TRANSLATE_NOOP("words", "drains"), QT_TRANSLATE_NOOP("words", "drain; sewer"),
       sulphur, all, QT_TRANSLATE_NOOP("words", "methanethiol"), fault, Care::doNotSwallow},
      {"4ba7c43175000a0ea913fa93cb833e27", QT_TRANSLATE_NOOP("words", "barnyard"), QT_TRANSLATE_NOOP("words", "stable; horse; leather"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "4-ethylphenol"), either, Care::none},
      {"7a7fb719441c23bb874835b44df8dd50", QT_TRANSLATE_NOOP("words", "mousy"), QT_TRANSLATE_NOOP("words", "mouse cage; stale cracker"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "tetrahydropyridines"), fault, Care::none},
      {"691366fca378aaf3df31dd44741472e2", QT_TRANSLATE_NOOP("words", "sick"), QT_TRANSLATE_NOOP("words", "baby sick; vomit; rancid butter"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "butyric acid"), fault, Care::doNotSwallow},
      {"e522b3f30716d434fd616ec39600a8d3", QT_TRANSLATE_NOOP("words", "cheese"), QT_TRANSLATE_NOOP("words", "cheesy; sweaty"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "isovaleric acid"), fault, Care::none},
      {"27774d2846a5c781204dcf2d9f3d0289", QT_TRANSLATE_NOOP("words", "goat"), QT_TRANSLATE_NOOP("words", "goaty"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "hexanoic and octanoic acid"), fault, Care::none},
      {"cc641bd4a5d30f3bfc54db686db0d0b1", QT_TRANSLATE_NOOP("words", "geranium"), QT_TRANSLATE_NOOP("words", "geranium leaf; crushed leaf"),
       spoiled, mead | cider | wine, QT_TRANSLATE_NOOP("words", "2-ethoxyhexa-3,5-diene"), fault, Care::none},
      {"46cdec898eb407391233e4cb357f041e", QT_TRANSLATE_NOOP("words", "ropy"), QT_TRANSLATE_NOOP("words", "slimy; stringy"),
       spoiled, all, "", fault, Care::doNotSwallow},
      {"9297527a5c8d38362a981654f305e39c", QT_TRANSLATE_NOOP("words", "mould"), QT_TRANSLATE_NOOP("words", "mouldy"),
       spoiled, all, "", fault, Care::doNotSwallow},
      {"87dc32daed80b8ecc96553e6ba8c098e", QT_TRANSLATE_NOOP("words", "rotten fruit"), QT_TRANSLATE_NOOP("words", "rotten apples"),
       spoiled, mead | cider | wine, "", fault, Care::doNotSwallow},
      {"42029b6f39ac28e3281024101694cd60", QT_TRANSLATE_NOOP("words", "manure"), QT_TRANSLATE_NOOP("words", "dung; faecal"),
       spoiled, all, QT_TRANSLATE_NOOP("words", "indole"), fault, Care::doNotSwallow},
      {"b3bff36535faf2086169a6eb74ca18d4", QT_TRANSLATE_NOOP("words", "damp cellar"), QT_TRANSLATE_NOOP("words", "corked; musty cork; TCA"),
       cellar, all, QT_TRANSLATE_NOOP("words", "2,4,6-trichloroanisole (TCA)"), fault, Care::none},
      {"c62b555628634b279e27f6af217f9d63", QT_TRANSLATE_NOOP("words", "earthy"), QT_TRANSLATE_NOOP("words", "soil; beetroot"),
       cellar, all, QT_TRANSLATE_NOOP("words", "geosmin"), fault, Care::none},
      {"78623108580ddcd428aebd2a032fa4a4", QT_TRANSLATE_NOOP("words", "musty"), QT_TRANSLATE_NOOP("words", "old sack; damp cloth"),
       cellar, all, "", fault, Care::none},
      {"013ff670a823586385ca0227ec013f18", QT_TRANSLATE_NOOP("words", "medicinal"), QT_TRANSLATE_NOOP("words", "antiseptic; sticking plaster; hospital"),
       cellar, all, QT_TRANSLATE_NOOP("words", "chlorophenols"), fault, Care::none},
      {"e5eea52819da14c5bcd9a7e68efbffab", QT_TRANSLATE_NOOP("words", "metal"), QT_TRANSLATE_NOOP("words", "metallic; iron; blood"),
       cellar, all, QT_TRANSLATE_NOOP("words", "iron, copper"), fault, Care::doNotSwallow},
      {"ca8cc274e27c3c96154589d2e1a1052d", QT_TRANSLATE_NOOP("words", "plastic"), QT_TRANSLATE_NOOP("words", "hose; vinyl"),
       cellar, all, "", fault, Care::doNotSwallow},
      {"ad1b6179c529f9294b802233695dd329", QT_TRANSLATE_NOOP("words", "cleaning agent"), QT_TRANSLATE_NOOP("words", "bleach; detergent; washing-up"),
       cellar, all, "", fault, Care::doNotSwallow},
  };
  return rows;
}

}  // namespace oddglass

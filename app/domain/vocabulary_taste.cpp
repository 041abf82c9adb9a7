#include "domain/vocabulary_rows.h"

#include "domain/mark.h"

namespace oddglass {

// Tastes, the feel in the mouth, and what yeast leaves.
std::span<const WordRow> wordsOfTaste() {
  using enum WordClass;
  using enum Leaning;
  using namespace drinks;
  static constexpr WordRow rows[] = {
      {"b2f445ee45bfd55a18d282b8b869b307", QT_TRANSLATE_NOOP("words", "sweet"), QT_TRANSLATE_NOOP("words", "sugary"),
       sweet, all, "", either, Care::pressure},
      {"6342730c04065dafbca3621ca5a0d606", QT_TRANSLATE_NOOP("words", "cloying"), QT_TRANSLATE_NOOP("words", "sickly sweet; syrupy"),
       sweet, all, "", fault, Care::pressure},
      {"1dc06ca7603aaebdf2248c9ee6525aad", QT_TRANSLATE_NOOP("words", "dry"), QT_TRANSLATE_NOOP("words", "bone dry; lean"),
       sweet, all, "", either, Care::pressure},
      {"e2238f7905274d859a9b64eba3bf9097", QT_TRANSLATE_NOOP("words", "sweetener"), QT_TRANSLATE_NOOP("words", "artificial sweetness"),
       sweet, beer | mead | cider, "", either, Care::none},
      {"5b48ffa62932da81a0b4138b3ea90314", QT_TRANSLATE_NOOP("words", "sour"), QT_TRANSLATE_NOOP("words", "tart; acidic"),
       sour, all, "", either, Care::none},
      {"bfeaefd33505811df7dc434f54b1503e", QT_TRANSLATE_NOOP("words", "sour milk"), QT_TRANSLATE_NOOP("words", "yoghurt; lactic"),
       sour, all, QT_TRANSLATE_NOOP("words", "lactic acid"), either, Care::none},
      {"7c1a64b9e24d51cdaafadede6377386a", QT_TRANSLATE_NOOP("words", "vinegar"), QT_TRANSLATE_NOOP("words", "acetic; vinegary"),
       sour, all, QT_TRANSLATE_NOOP("words", "acetic acid"), fault, Care::none},
      {"33977314d0bbfe0522bc0e8498c883dd", QT_TRANSLATE_NOOP("words", "fruit acid"), QT_TRANSLATE_NOOP("words", "malic; unripe fruit"),
       sour, mead | cider | wine, QT_TRANSLATE_NOOP("words", "malic acid"), either, Care::none},
      {"e8f267cc59b5668fd7e65b0318a01683", QT_TRANSLATE_NOOP("words", "flabby"), QT_TRANSLATE_NOOP("words", "dull acid; lacking acid"),
       sour, mead | cider | wine, "", fault, Care::none},
      {"e06e58aebbb96fd0d6c32b031fc581e0", QT_TRANSLATE_NOOP("words", "bitter"), QT_TRANSLATE_NOOP("words", "hop bitterness"),
       bitter, all, QT_TRANSLATE_NOOP("words", "iso-alpha acids"), either, Care::none},
      {"85529bfaa1d5b1df06e7148a271f9a91", QT_TRANSLATE_NOOP("words", "coarse bitterness"), QT_TRANSLATE_NOOP("words", "rough bitterness; lingering bitterness"),
       bitter, all, "", fault, Care::none},
      {"712a588a674b90d873bf9c6ef516c1f9", QT_TRANSLATE_NOOP("words", "pithy"), QT_TRANSLATE_NOOP("words", "peel; pith"),
       bitter, all, "", either, Care::none},
      {"f60e196f7af463d696213f5243dcbf39", QT_TRANSLATE_NOOP("words", "salty"), QT_TRANSLATE_NOOP("words", "salt; briny"),
       bitter, all, "", either, Care::none},
      {"f8d23586d4b1b7bb0c19b66dcb7e0fc9", QT_TRANSLATE_NOOP("words", "mineral"), QT_TRANSLATE_NOOP("words", "chalky; wet stone"),
       bitter, all, "", either, Care::none},
      {"2b891895f56d1176fc4f94608718f45d", QT_TRANSLATE_NOOP("words", "thin"), QT_TRANSLATE_NOOP("words", "watery; weak"),
       mouthfeel, all, "", either, Care::none},
      {"f335b3ea5ad07ae47d1e17789815775e", QT_TRANSLATE_NOOP("words", "full"), QT_TRANSLATE_NOOP("words", "round; thick"),
       mouthfeel, all, "", either, Care::none},
      {"715a085deb13c0101f1b0191add6052b", QT_TRANSLATE_NOOP("words", "creamy"), QT_TRANSLATE_NOOP("words", "silky"),
       mouthfeel, beer, "", wanted, Care::none},
      {"d30cf70b2fead5dac2215e158a157c9e", QT_TRANSLATE_NOOP("words", "astringent"), QT_TRANSLATE_NOOP("words", "drying; puckering; tannic"),
       mouthfeel, all, QT_TRANSLATE_NOOP("words", "tannins"), either, Care::none},
      {"22803a85e944f2c0a37413a636e56c5a", QT_TRANSLATE_NOOP("words", "warming"), "",
       mouthfeel, all, QT_TRANSLATE_NOOP("words", "ethanol"), either, Care::none},
      {"e4fab0a7d1a47344813d7c115a99dcfa", QT_TRANSLATE_NOOP("words", "hot alcohol"), QT_TRANSLATE_NOOP("words", "hot; harsh; burning; fusel"),
       mouthfeel, all, QT_TRANSLATE_NOOP("words", "higher alcohols"), fault, Care::none},
      {"facd4629845428a62c2ed9e3d1429b53", QT_TRANSLATE_NOOP("words", "prickly"), QT_TRANSLATE_NOOP("words", "fizzy; sharp bubbles"),
       mouthfeel, all, QT_TRANSLATE_NOOP("words", "carbon dioxide"), either, Care::pressure},
      {"356c1cf3e5750e26ca727069252ff149", QT_TRANSLATE_NOOP("words", "flat"), QT_TRANSLATE_NOOP("words", "no fizz; lost its fizz"),
       mouthfeel, all, "", either, Care::pressure},
      {"a487cb2bcf2a52a549c53d27417ac2d1", QT_TRANSLATE_NOOP("words", "gushing"), QT_TRANSLATE_NOOP("words", "gusher; foams over"),
       mouthfeel, all, "", fault, Care::pressure},
      {"b6fa4a993cf095c03371fda516ff41a2", QT_TRANSLATE_NOOP("words", "yeasty"), QT_TRANSLATE_NOOP("words", "fresh yeast; dough"),
       yeast, all, "", either, Care::none},
      {"a6e423e1e66f86b970175f52611cccf7", QT_TRANSLATE_NOOP("words", "meaty"), QT_TRANSLATE_NOOP("words", "meat broth; soy sauce"),
       yeast, all, "", fault, Care::none},
      {"383b67f27b484c93c74991e175defb7e", QT_TRANSLATE_NOOP("words", "butter"), QT_TRANSLATE_NOOP("words", "buttery; butterscotch; diacetyl"),
       yeast, all, QT_TRANSLATE_NOOP("words", "diacetyl"), either, Care::none},
      {"d114d811421ddbfe2a25b63b3670fabd", QT_TRANSLATE_NOOP("words", "green apple"), QT_TRANSLATE_NOOP("words", "unripe apple; acetaldehyde"),
       yeast, all, QT_TRANSLATE_NOOP("words", "acetaldehyde"), fault, Care::none},
      {"5ed814d44687888bbf852f1018d954f5", QT_TRANSLATE_NOOP("words", "nail varnish"), QT_TRANSLATE_NOOP("words", "solvent; glue; ethyl acetate"),
       yeast, all, QT_TRANSLATE_NOOP("words", "ethyl acetate"), fault, Care::none},
      {"90b4f46be6b7fd7049091d1c5f32a92a", QT_TRANSLATE_NOOP("words", "soapy"), QT_TRANSLATE_NOOP("words", "soap"),
       yeast, all, "", fault, Care::none},
      {"48f92cab9923f869cccb97386e1d0a77", QT_TRANSLATE_NOOP("words", "bubble gum"), "",
       yeast, beer | mead, "", either, Care::none},
  };
  return rows;
}

}  // namespace oddglass

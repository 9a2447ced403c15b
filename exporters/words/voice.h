// Who speaks: texts in one language, lengths in one style. What lists and sheets are worded by.
#pragma once

#include "exporters/words/words.h"

#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace roundlay {

class Voice {
  public:
    /// English, metric.
    Voice() = default;
    explicit Voice(const Speech &speech) : Voice(speech.language, LengthStyle{.system = speech.units}) {}
    Voice(Language language, const LengthStyle &style) : language_(language), style_(style) {}

    Language language() const { return language_; }
    UnitSystem system() const { return style_.system; }
    Speech speech() const { return {language_, style_.system}; }

    std::string length(double mm) const;

    /// `say("%1 deep from the top", in_mm(deep))`: the text in this language, its lengths in this style. A
    /// literal, so that the tests find each that has no translation. An amount that is a std::string stands
    /// as it is: a name, or words that have been said before.
    template <typename... Amounts>
    std::string say(SaidText<sizeof...(Amounts)> text, Amounts &&...amounts) const {
        return words(said(text, std::forward<Amounts>(amounts)...));
    }
    /// What somebody else has said.
    std::string words(const Said &said) const { return words_of(said, language_, style_); }
    /// A word of the kernel's tables: a use, a finish, a species.
    std::string word(std::string_view english) const { return words(phrase(english)); }
    /// What a piece or a cut calls a thing: as the person named it, or in words where the program did.
    std::string name(const std::string &thing) const;

    /// Learns what the program calls things that nobody has named (names_given of the layout).
    void know(const std::vector<std::pair<std::string, Said>> &names_given);

  private:
    Language language_ = Language::english;
    LengthStyle style_;
    std::map<std::string, Said> given_; ///< empty in English, where a thing's name says it
};

} // namespace roundlay

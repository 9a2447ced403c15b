#include "kernel/survey/survey_words.h"

#include "kernel/measure/character.h"

namespace roundlay {

namespace {

struct Pair {
    const char *english, *french;
};

constexpr Pair words_of_records[] = {
    {"outside", "dehors"},
    {"inside", "dedans"},
    {"top", "dessus"},
    {"under", "dessous"},
    {"sound", "sain"},
    {"checked", "fissuré"},
    {"soft", "mou"},
    {"rotten", "pourri"},
    {"missing", "manquant"},
    {"found", "en place"},
    {"broken", "cassé"},
    {"sawn", "scié"},
    {"spring", "printemps"},
    {"summer", "été"},
    {"autumn", "automne"},
    {"winter", "hiver"},
    {"proposed", "proposé"},
    {"contradicted", "contredit"},
    {"measured", "mesuré"},
    {"by", "par"},
    {"on", "le"},
    {"keep", "garder"},
    {"mend", "réparer"},
    {"replace", "remplacer"},
    {"turn end for end", "retourner bout pour bout"},
    {"use elsewhere", "réemployer ailleurs"},
    {"leave out", "ne pas reposer"},
    {"feet and inches", "pieds et pouces"},
    {"decimal feet", "pieds décimaux"},
    // What people write as well: read, never written. "Laisser" is none of them: it leaves a log where it is.
    {"leave out", "écarter"},
    {"missing", "lost"},
    {"missing", "perdu"},
};

/// `pourrie` is `pourri`: a peg and a log are told apart in French.
bool is_word(const std::string &plain, const std::string &word) {
    return plain == word || plain == word + "e";
}

} // namespace

std::string survey_word(const std::string &english, bool in_french) {
    if (in_french)
        for (const Pair &pair : words_of_records)
            if (english == pair.english) return pair.french;
    return english;
}

std::string survey_english(const std::string &cell) {
    const std::string plain = plain_letters(cell);
    for (const Pair &pair : words_of_records)
        if (plain == pair.english || is_word(plain, plain_letters(pair.french))) return pair.english;
    return cell;
}

} // namespace roundlay

#include "exporters/sheets/cut_sheet/warnings.h"

#include "exporters/words/words.h"
#include "kernel/layout/pieces/finding_pieces.h"

#include <algorithm>

namespace roundlay::sheets {
Indexed<std::vector<std::string>, Model> warnings_by_model(const Findings &findings, const Shell &shell,
                                                           const Layout &layout, Language language) {
    Indexed<std::vector<std::string>, Model> all(layout.models.size());
    for (const Finding &finding : findings) {
        if (finding.weight == Weight::note) continue;
        const std::string words = short_sentence_of(finding, {language, shell.units});
        for (const Index<Piece> piece : pieces_of(finding, shell, layout)) {
            auto &mine = all.at(layout.pieces[piece].model);
            if (std::find(mine.begin(), mine.end(), words) == mine.end()) mine.push_back(words);
        }
    }
    return all;
}

} // namespace roundlay::sheets

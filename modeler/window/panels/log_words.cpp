#include "modeler/window/panels/log_words.h"

#include "exporters/lists/cut_list.h"
#include "kernel/layout/pieces/finding_pieces.h"
#include "kernel/measure/load.h"
#include "kernel/review/floor_screen.h"
#include "kernel/review/opening_facts.h"
#include "kernel/trade/settling.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(LogPanel)

  public:
    void row(const QString &name, const QString &value) {
        if (!value.isEmpty())
            html_ += QStringLiteral("<tr><td style='padding-right:10px'>%1</td><td>%2</td></tr>")
                         .arg(name.toHtmlEscaped(), value.toHtmlEscaped());
    }
    QString table() const { return QStringLiteral("<table>%1</table>").arg(html_); }

    void sizes(const PieceRow &row, UnitSystem units);
    void caution(const CutList &list, const PieceRow &row);
    void screen(const State &state, Index<Timber> timber);
    void neighbours(const PieceRow &row);
    static QString findings(const State &state, Index<Piece> piece);

  private:
    QString html_;
};

QString joined(const std::vector<std::string> &all) {
    QStringList list;
    for (const std::string &item : all)
        list << text(item);
    return list.join(QStringLiteral(", "));
}

void Words::sizes(const PieceRow &row, UnitSystem units) {
    const Blank &b = row.stick.blank;
    this->row(tr("Kind"), text(row.stick.kind));
    this->row(tr("Blank"), tr("%1 × %2, %3 long")
                               .arg(length_text(b.width, units), length_text(b.height, units),
                                    length_text(b.length, units)));
    this->row(tr("Finish"), text(row.finish));
    this->row(tr("Fabric"), text(row.fabric));
    this->row(tr("Wood"), text(row.stick.species));
    this->row(tr("Volume"), volume_text(row.stick.volume, units));
    if (row.stick.high_kg <= 0) return;
    this->row(tr("Weight, estimated"), weight_text(row.stick.low_kg, row.stick.high_kg, units));
    if (row.stick.blank_high_kg > 0)
        this->row(tr("Its blank"), weight_text(row.stick.blank_low_kg, row.stick.blank_high_kg, units));
    this->row(tr("Its round log"), weight_text(row.stick.log_low_kg, row.stick.log_high_kg, units));
}

void Words::caution(const CutList &list, const PieceRow &row) {
    this->row(tr("Weights"),
              text(row.stick.high_kg > 0 ? list.voice.word(weight_caution) : row.stick.weight_note));
}

/// How a joist, beam or trimmer of a floor with a stated load would bend and be pressed.
void Words::screen(const State &state, Index<Timber> timber) {
    const FloorScreen all = screen_floors(state.job.shell, state.job.layout);
    const Voice voice = voice_of(state.job);
    const bool metric = state.job.shell.units == UnitSystem::metric;
    const auto pressed = [metric](double mpa) {
        return metric ? QStringLiteral("%1 MPa").arg(mpa, 0, 'f', 2)
                      : QStringLiteral("%1 psi").arg(mpa / mpa_per_psi, 0, 'f', 0);
    };
    for (const TimberScreen &s : all.timbers) {
        if (s.timber != timber) continue;
        const UnitSystem units = state.job.shell.units;
        this->row(tr("Screened span"), length_text(s.span, units));
        this->row(tr("Bends under the live load"),
                  tr("%1, a %2th part of the span")
                      .arg(length_text(s.deflection, units))
                      .arg(std::floor(s.span / std::max(s.deflection, 1e-9)), 0, 'f', 0));
        this->row(tr("Bending, shear, bearing"),
                  QStringLiteral("%1; %2; %3").arg(pressed(s.bending), pressed(s.shear), pressed(s.bearing)));
        this->row(tr("Allowable stresses"), text(voice.word(no_allowable)));
        this->row(tr("Formulas"), text(voice.words(all.formulas)));
        this->row(tr("Inputs"), text(voice.words(all.inputs)));
        this->row(tr("Caution"), text(voice.word(joist_caution)));
    }
}

void Words::neighbours(const PieceRow &row) {
    this->row(tr("Butt"), row.butt_left ? tr("left") : tr("right"));
    this->row(tr("Left end"), text(row.left));
    this->row(tr("Right end"), text(row.right));
    this->row(tr("Above"), joined(row.above));
    this->row(tr("Below"), joined(row.below));
    this->row(tr("Notched left to"), joined(row.at_left));
    this->row(tr("Notched right to"), joined(row.at_right));
    this->row(tr("Raised as number"), QString::number(row.raise));
    this->row(tr("Cuts"), joined(row.stick.cuts));
}

QString Words::findings(const State &state, Index<Piece> piece) {
    QString list;
    for (const Finding &f : state.job.findings) {
        const auto pieces = pieces_of(f, state.job.shell, state.job.layout);
        if (!std::binary_search(pieces.begin(), pieces.end(), piece)) continue;
        list += QStringLiteral("<li>%1</li>").arg(sentence_text(f, state.job.shell.units).toHtmlEscaped());
    }
    return list.isEmpty() ? QString() : QStringLiteral("<p>%1</p><ul>%2</ul>").arg(tr("Findings"), list);
}

} // namespace

QString words_of_piece(const State &state, Index<Piece> piece) {
    const CutList list =
        collect_cut_list(state.job.shell, state.job.layout, volumes_of(state.job.bodies), language());
    const PieceRow &row = list.pieces[piece.at()];
    Words words;
    words.sizes(row, state.job.shell.units);
    words.caution(list, row);
    if (const auto timber = state.job.layout.pieces[piece].timber) words.screen(state, *timber);
    words.neighbours(row);
    std::vector<std::string> alike;
    const Layout &layout = state.job.layout;
    const Index<Model> model = layout.pieces[piece].model;
    for (const Index<Piece> other : layout.models[model].pieces)
        if (other != piece) alike.push_back(layout.pieces[other].tag);
    words.row(QCoreApplication::translate("LogPanel", "Equal to"), joined(alike));
    return words.table() + Words::findings(state, piece);
}

QString words_of_opening(const State &state, int opening) {
    const auto all = opening_facts(state.job.shell, state.job.layout);
    if (opening < 0 || opening >= static_cast<int>(all.size())) return {};
    const OpeningFacts &facts = all[static_cast<std::size_t>(opening)];
    const UnitSystem units = state.job.shell.units;
    const auto tag = [&](Index<Piece> piece) { return text(state.job.layout.pieces[piece].tag); };
    Words words;
    if (facts.header)
        words.row(Words::tr("Header log"), Words::tr("%1, runs %2 and %3 past the jambs")
                                               .arg(tag(*facts.header), length_text(facts.runs_left, units),
                                                    length_text(facts.runs_right, units)));
    if (facts.sill) words.row(Words::tr("Log below"), tag(*facts.sill));
    const Voice voice = voice_of(state.job);
    words.row(Words::tr("Settle space"), length_text(facts.settle_space, units));
    words.row(Words::tr("by"), text(voice.words(facts.settle_basis)));
    words.row(Words::tr("Caution"), text(voice.word(settling_caution)));
    return words.table();
}

} // namespace roundlay::window

#include "modeler/window/panels/lift_rows.h"

#include "exporters/lists/progress_words.h"
#include "kernel/layout/piece_places.h"
#include "modeler/window/desk/finding_words.h"
#include "modeler/window/desk/words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>

namespace roundlay::window {

namespace {

class Words {
    Q_DECLARE_TR_FUNCTIONS(Lifts)
};

QString tags(const Layout &layout, const std::vector<Index<Piece>> &pieces) {
    QStringList all;
    for (const Index<Piece> piece : pieces)
        all << text(layout.pieces[piece].tag);
    return all.join(QStringLiteral(", "));
}

/// What keeps it from its place, or should be done before.
QString reason(const Layout &layout, const Turn &turn) {
    switch (turn.may) {
    case May::done:
    case May::gone:
        return {};
    case May::waits:
        return tags(layout, turn.waits_for);
    case May::shut_in:
        return Words::tr("cannot come down past %1").arg(tags(layout, turn.shut_in_by));
    case May::now:
        break;
    }
    return turn.pegs_first.empty() ? QString()
                                   : Words::tr("pegs first of %1").arg(tags(layout, turn.pegs_first));
}

class Rows {
  public:
    Rows(const ExportJob &job, const Site &site, Deed deed)
        : job_(job), layout_(job.layout), site_(site), deed_(deed), voice_({language(), job.shell.units}) {}

    std::vector<LiftRow> all() {
        bool has_next = false;
        for (const Index<Piece> log : logs()) {
            LiftRow row = row_of(log, log);
            row.is_next = !has_next && row.may == May::now;
            has_next = has_next || row.is_next;
            if (row.is_next) row.turn = Words::tr("next");
            ++number_;
            row.number = number_;
            rows_.push_back(std::move(row));
            for (const Index<Piece> wood : new_wood_in(layout_.pieces, log)) {
                rows_.push_back(row_of(wood, log));
                rows_.back().number = number_;
            }
        }
        return std::move(rows_);
    }

  private:
    std::vector<Index<Piece>> logs() const {
        std::vector<Index<Piece>> logs;
        for (const Index<Piece> piece : layout_.pieces.indices())
            if (!layout_.pieces[piece].mends && !(deed_ == Deed::down && site_.ticked.is_gone(piece)))
                logs.push_back(piece);
        std::ranges::sort(logs, {}, [&](Index<Piece> i) { return layout_.pieces[i].raise; });
        if (deed_ == Deed::down) std::ranges::reverse(logs);
        return logs;
    }

    LiftRow row_of(Index<Piece> piece, Index<Piece> log) const {
        LiftRow row{.piece = piece, .log = log, .tag = text(layout_.pieces[piece].tag)};
        const Turn turn = turn_of(layout_, site_, deed_, log);
        row.may = turn.may;
        if (piece == log) {
            row.weight = weight_of(log);
            row.turn = text(may_words(turn.may, deed_, voice_));
            row.waits_for = reason(layout_, turn);
        } else {
            row.waits_for =
                Words::tr("lifted with %1, whose weight has it").arg(text(layout_.pieces[log].tag));
        }
        for (const Deed deed : all_deeds) {
            const auto &tick = site_.ticked.tick(piece, deed);
            const auto at = static_cast<std::size_t>(deed);
            row.ticked[at] = tick.has_value();
            if (tick && !(tick->by.empty() && tick->on.empty())) row.who[at] = text(tick_words(tick, voice_));
        }
        return row;
    }

    QString weight_of(Index<Piece> log) const {
        const Lift lift = lift_of(job_.shell, layout_, job_.bodies, log);
        return lift.known ? weight_text(lift.low_kg, lift.high_kg, job_.shell.units) : Words::tr("not known");
    }

    const ExportJob &job_;
    const Layout &layout_;
    const Site &site_;
    Deed deed_;
    Voice voice_;
    int number_ = 0;
    std::vector<LiftRow> rows_;
};

} // namespace

QString deed_word(Deed deed) {
    switch (deed) {
    case Deed::down:
        return Words::tr("down");
    case Deed::cut:
        return Words::tr("cut");
    case Deed::checked:
        return Words::tr("checked");
    case Deed::up:
        return Words::tr("up");
    case Deed::pegged:
        break;
    }
    return Words::tr("pegged");
}

std::vector<LiftRow> lift_rows(const ExportJob &job, const Site &site, Deed deed) {
    return Rows(job, site, deed).all();
}

} // namespace roundlay::window

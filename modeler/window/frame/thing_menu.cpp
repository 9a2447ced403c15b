#include "modeler/window/frame/thing_menu.h"

#include "kernel/layout/openings/openings.h"
#include "modeler/window/desk/about.h"
#include "modeler/window/desk/desk.h"
#include "modeler/window/desk/words.h"
#include "modeler/window/frame/main_window.h"
#include "modeler/window/frame/piece_export.h"
#include "modeler/window/frame/print.h"
#include "modeler/window/panels/findings_panel.h"
#include "modeler/window/panels/log_panel.h"
#include "modeler/window/record/at_hand.h"
#include "modeler/window/record/found_words.h"
#include "modeler/window/record/record_panel.h"
#include "modeler/window/views/elevation_view.h"
#include "modeler/window/views/legend.h"

#include <QAction>
#include <QDockWidget>

namespace roundlay::window {

ThingMenu::ThingMenu(MainWindow &window, Chosen thing, Legend *legend, Spot spot)
    : QMenu(&window), window_(window), thing_(std::move(thing)), spot_(std::move(spot)) {
    setObjectName(QStringLiteral("thing"));
    begin();
    switch (thing_.kind) {
    case Chosen::Kind::piece:
        for_piece();
        break;
    case Chosen::Kind::wall:
        for_wall();
        break;
    case Chosen::Kind::corner:
        for_corner();
        break;
    case Chosen::Kind::opening:
        for_opening();
        break;
    case Chosen::Kind::nothing:
        break;
    }
    for_findings();
    for_views(legend);
}

void ThingMenu::deed(const QString &name, const QString &words, const std::function<void()> &what) {
    QAction *made = addAction(words);
    made->setObjectName(QStringLiteral("thing_") + name);
    connect(made, &QAction::triggered, &window_, [what] { what(); });
}

/// In the same words; choosing the thing first makes ready what waits for a choice.
void ThingMenu::also(const char *action, bool to_the_thing) {
    QAction *own = window_.action(QLatin1String(action));
    QAction *made = addAction(own->icon(), own->text());
    made->setObjectName(QStringLiteral("thing_") + QLatin1String(action));
    made->setCheckable(own->isCheckable());
    made->setChecked(own->isChecked());
    made->setEnabled(own->isEnabled() || to_the_thing);
    connect(made, &QAction::triggered, &window_, [this, own, to_the_thing] {
        if (to_the_thing) choose();
        own->trigger();
    });
}

void ThingMenu::choose() {
    const StatePtr &state = window_.desk().drawn();
    if (!state) return;
    Selection &selection = window_.selection();
    if (thing_ == selection.chosen()) return;
    switch (thing_.kind) {
    case Chosen::Kind::piece:
        if (const auto piece = piece_tagged(window_.desk().standing()->job.layout, thing_.name))
            selection.choose_piece(window_.desk().standing()->job.layout, *piece);
        break;
    case Chosen::Kind::wall:
        selection.choose_wall(thing_.name);
        break;
    case Chosen::Kind::corner:
        selection.choose_corner(thing_.name);
        break;
    case Chosen::Kind::opening:
        selection.choose_opening(state->job.shell, thing_.opening);
        break;
    case Chosen::Kind::nothing:
        break;
    }
}

void ThingMenu::raise(const char *dock) {
    choose();
    raise_panel(dock);
}

void ThingMenu::raise_panel(const char *dock) {
    auto *found = window_.findChild<QDockWidget *>(QLatin1String(dock));
    found->show();
    found->raise();
    if (found->widget() != nullptr) found->widget()->setFocus();
}

void ThingMenu::begin() {
    const auto title = [&](const QString &words) {
        QAction *made = addAction(words);
        QFont bold = made->font();
        bold.setBold(true);
        made->setFont(bold);
        made->setEnabled(false);
        deed(QStringLiteral("choose"), tr("C&hoose"), [this] { choose(); });
    };
    const QString name = text(thing_.name);
    if (thing_.kind == Chosen::Kind::piece) title(tr("Log %1").arg(name));
    if (thing_.kind == Chosen::Kind::wall) title(tr("Wall %1").arg(name));
    if (thing_.kind == Chosen::Kind::corner) title(tr("Corner %1").arg(name));
    if (thing_.kind != Chosen::Kind::opening || !window_.desk().drawn()) return;
    title(text(name_of(window_.desk().drawn()->job.shell, static_cast<std::size_t>(thing_.opening))));
}

/// What can be put there.
void ThingMenu::for_spot() {
    deed(QStringLiteral("add_window_here"), tr("Add a &window here"),
         [this] { window_.elevation().add_at(OpeningKind::window, spot_); });
    deed(QStringLiteral("add_door_here"), tr("Add a &door here"),
         [this] { window_.elevation().add_at(OpeningKind::door, spot_); });
    deed(QStringLiteral("add_step_here"), tr("Add a s&tep of the foundation here"), [this] {
        window_.log().add_step(spot_.wall, spot_.along);
        raise_panel("log");
    });
}

void ThingMenu::for_piece() {
    deed(QStringLiteral("sheet"), tr("Show its cut &sheet"), [this] { raise("sheet"); });
    deed(QStringLiteral("elevation"), tr("Show it in the &elevation"), [this] { raise("elevation"); });
    deed(QStringLiteral("log"), tr("Show its &sizes and neighbours"), [this] { raise("log"); });
    deed(QStringLiteral("joint"), tr("Show its &joint"), [this] { raise("joint"); });
    deed(QStringLiteral("list"), tr("Show it in the cut &list"), [this] { raise("cut_list"); });
    for_record();
    if (!spot_.wall.empty()) addSeparator(), for_spot();
    if (!window_.desk().state()->stands()) return; // nothing is cut from what cannot be built
    addSeparator();
    const StatePtr state = window_.desk().standing();
    const auto found = piece_tagged(state->job.layout, thing_.name);
    if (!found) return;
    const Index<Piece> piece = *found;
    deed(QStringLiteral("export"), tr("E&xport this piece…"),
         [this, state, piece] { export_piece(state->job, piece, &window_); });
    deed(QStringLiteral("print"), tr("&Print its cut sheet…"), [this, state, piece] {
        const Piece &p = state->job.layout.pieces[piece];
        preview_sheets(state, p.model, window_.desk().title() + u' ' + text(p.tag), &window_);
    });
}

/// What was found there, and what becomes of it.
void ThingMenu::for_record() {
    const StatePtr &standing = window_.desk().standing();
    const auto piece = standing ? piece_tagged(standing->job.layout, thing_.name) : std::nullopt;
    if (!piece || !is_log(standing->job.layout.pieces[*piece])) return; // of floors, new wood of mends
    addSeparator();
    deed(QStringLiteral("record"), tr("&Record it"), [this] {
        choose();
        raise_panel("record");
        window_.record().begin_typing();
    });
    const auto tag = window_.at_hand().tag_of(*piece);
    if (!tag) {
        const auto states = window_.desk().reading()->states;
        addAction(states.empty() ? tr("Another log of the record has its tag")
                                 : tr("Nothing is recorded of it: that is done in the state %1")
                                       .arg(text(states.front().name)))
            ->setEnabled(false);
        return;
    }
    QMenu *decide = addMenu(tr("De&cide about log %1").arg(text(*tag)));
    decide->setObjectName(QStringLiteral("thing_decide"));
    for (const Decision each : all_decisions) {
        QAction *made = decide->addAction(decision_word(each) + u'\u2026');
        made->setObjectName(QStringLiteral("thing_decide_%1").arg(static_cast<int>(each)));
        connect(made, &QAction::triggered, &window_,
                [&window = window_, tag = *tag, each] { window.record().decide(tag, each); });
    }
}

void ThingMenu::for_wall() {
    deed(QStringLiteral("elevation"), tr("Show its &elevation"), [this] { raise("elevation"); });
    addSeparator();
    if (spot_.wall.empty())
        for (const char *action : {"add_window", "add_door", "add_step"})
            also(action, true);
    else
        for_spot();
    for (const char *action : {"add_partition", "wall_outward", "wall_inward"})
        also(action, true);
    const Shell &shell = window_.desk().drawn()->job.shell;
    for (const Partition &partition : shell.partitions)
        if (partition.name == thing_.name) also("remove", true);
}

void ThingMenu::for_corner() {
    deed(QStringLiteral("joint"), tr("Show its &joint"), [this] { raise("joint"); });
}

void ThingMenu::for_opening() {
    deed(QStringLiteral("elevation"), tr("Show it in the &elevation"), [this] { raise("elevation"); });
    deed(QStringLiteral("log"), tr("Show its &sizes"), [this] { raise("log"); });
    also("remove", true);
}

void ThingMenu::for_findings() {
    if (thing_.kind == Chosen::Kind::nothing) return;
    const auto found = findings_about(thing_, *window_.desk().state());
    if (found.empty()) return;
    addSeparator();
    deed(QStringLiteral("findings"), tr("Show its &findings (%1)").arg(found.size()), [this, found] {
        raise("findings");
        window_.findings().point_to(found);
    });
}

void ThingMenu::for_views(Legend *legend) {
    addSeparator();
    if (legend != nullptr) {
        QAction *made = addAction(tr("Le&gend"));
        made->setObjectName(QStringLiteral("thing_legend"));
        made->setCheckable(true);
        made->setChecked(legend->is_wanted());
        connect(made, &QAction::triggered, &window_,
                [this, legend](bool on) { window_.show_legend(on, legend); });
    }
    for (const char *action : {"fit", "save_picture", "choose_nothing"})
        also(action, false);
}

} // namespace roundlay::window

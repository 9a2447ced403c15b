#include "modeler/window/panels/species_choice.h"

#include "kernel/trade/species.h"
#include "modeler/window/desk/kernel_words.h"
#include "modeler/window/desk/words.h"

#include <QComboBox>

namespace roundlay::window {

void add_species(QComboBox &choice) {
    for (const Species &species : all_species())
        choice.addItem(kernel_words(text(species.name)), text(species.name));
    // the longest word does not decide how wide the panel is
    choice.setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
}

void show_species(QComboBox &choice, const std::string &species) {
    if (species.empty()) return choice.setCurrentIndex(0);
    const QString name = text(species);
    if (choice.findData(name) < 0) choice.addItem(name, name);
    choice.setCurrentIndex(choice.findData(name));
}

} // namespace roundlay::window

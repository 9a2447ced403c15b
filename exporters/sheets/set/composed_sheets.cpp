#include "exporters/sheets/set/composed_sheets.h"

#include "kernel/threads/for_each_index.h"

namespace roundlay::sheets {
namespace {

std::string stock_words(const std::optional<LabelStock> &stock) {
    std::string all;
    if (!stock) return all;
    for (const double number : {stock->width, stock->height, stock->left, stock->top, stock->gap_across,
                                stock->gap_down, double(stock->columns), double(stock->rows)})
        all += std::to_string(number) + ' ';
    return all;
}

std::string key_of(const Subject &subject, const Draft &draft) {
    const PaperSize size = draft.size();
    return subject.about + '\n' + std::to_string(size.width) + 'x' + std::to_string(size.height) + '\n' +
           stock_words(draft.options.labels) + '\n' + draft.options.fields.date + '\n' +
           std::string(tag_of(draft.options.fields.language));
}

} // namespace

std::shared_ptr<ComposedSheets::Slot> ComposedSheets::slot(const std::string &name) {
    const std::lock_guard lock(mutex_);
    std::shared_ptr<Slot> &slot = slots_[name];
    if (!slot) slot = std::make_shared<Slot>();
    return slot;
}

SharedSheets ComposedSheets::of(const Subject &subject, const Draft &draft) {
    const auto mine = slot(key_of(subject, draft));
    std::call_once(mine->once, [&] {
        ++compositions_;
        mine->sheets = std::make_shared<const std::vector<Sheet>>(composed(subject, draft));
    });
    return mine->sheets;
}

std::vector<SharedSheets> composed(const SheetSet &set, const Draft &draft, ComposedSheets &known,
                                   int threads, const GoOn &go_on) {
    std::vector<SharedSheets> all(set.size());
    const bool whole = for_each_index(
        set.size(), threads, [&](std::size_t i) { all[i] = known.of(set[i], draft); }, go_on);
    if (!whole) all.clear();
    return all;
}

} // namespace roundlay::sheets

#include "exporters/sheets/frame/titled.h"

#include "exporters/words/voice.h"

namespace roundlay::sheets {

namespace {

TitleFields fields_of(const Title &title, const SheetOptions &options, const std::string &shell) {
    TitleFields fields = options.fields;
    fields.title = title.title;
    fields.supplement = title.supplement;
    fields.document_type = title.document_type;
    fields.number = fields.number.empty() ? title.number : fields.number + " " + title.number;
    fields.scale = title.scale;
    fields.symbol = title.symbol;
    fields.note = title.note;
    fields.angle = options.angle;
    fields.shell = shell;
    return fields;
}

} // namespace

std::vector<Sheet> framed(const Titled &titled, PaperSize size, const SheetOptions &options,
                          const std::string &shell) {
    const TitleFields fields = fields_of(titled.title, options, shell);
    const Voice voice({fields.language, UnitSystem::metric});
    std::vector<Sheet> sheets;
    const int count = static_cast<int>(titled.pages.size());
    for (const Page &page : titled.pages) {
        const int number = static_cast<int>(sheets.size()) + 1;
        Sheet sheet = framed_sheet(size, fields, number, count);
        for (Item &item : page.items())
            sheet.items.push_back(std::move(item));
        sheet.subject = titled.names.title;
        sheet.title = titled.names.title + (count > 1 ? voice.say(", %1 of %2", number, count) : "");
        sheet.anchor = titled.names.anchor + ":" + std::to_string(number);
        sheet.chapter = titled.names.chapter;
        sheets.push_back(std::move(sheet));
    }
    return sheets;
}

} // namespace roundlay::sheets

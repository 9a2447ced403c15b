#include "exporters/sheets/pdf/pdf.h"

#include "exporters/sheets/pdf/canvas.h"
#include "exporters/sheets/pdf/finish.h"

#include <cairo-pdf.h>

#include <array>
#include <chrono>
#include <cstdio>
#include <stdexcept>
#include <unordered_map>

namespace roundlay::sheets {
namespace {

constexpr double points_per_mm = 72 / 25.4;

cairo_status_t append(void *closure, const unsigned char *data, unsigned int length) {
    static_cast<std::string *>(closure)->append(reinterpret_cast<const char *>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

/// ISO 8601 (from memory) in UTC, as cairo reads it.
std::string date_text(std::int64_t seconds_since_1970) {
    using namespace std::chrono;
    const sys_seconds when{seconds{seconds_since_1970}};
    const auto day = floor<days>(when);
    const year_month_day date{day};
    const hh_mm_ss time{when - day};
    std::array<char, 64> room{};
    std::snprintf(room.data(), room.size(), "%04d-%02u-%02uT%02d:%02d:%02dZ", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(time.hours().count()), static_cast<int>(time.minutes().count()),
                  static_cast<int>(time.seconds().count()));
    return room.data();
}

void set_metadata(cairo_surface_t *surface, const Book &book) {
    const std::string date = date_text(book.created.value_or(book_time()));
    const auto set = [&](cairo_pdf_metadata_t what, const std::string &text) {
        if (!text.empty()) cairo_pdf_surface_set_metadata(surface, what, text.c_str());
    };
    set(CAIRO_PDF_METADATA_TITLE, book.title);
    set(CAIRO_PDF_METADATA_AUTHOR, book.author);
    set(CAIRO_PDF_METADATA_SUBJECT, book.subject);
    set(CAIRO_PDF_METADATA_CREATOR, "roundlay");
    set(CAIRO_PDF_METADATA_CREATE_DATE, date);
    set(CAIRO_PDF_METADATA_MOD_DATE, date);
}

/// Bookmarks of the sheets, under those of their chapters.
class Outline {
  public:
    explicit Outline(cairo_surface_t *surface) : surface_(surface) {}

    void add(const Sheet &sheet, int page) {
        if (sheet.title.empty()) return;
        int parent = CAIRO_PDF_OUTLINE_ROOT;
        if (!sheet.chapter.empty()) parent = chapter(sheet.chapter, page);
        mark(parent, sheet.title, page, 0);
    }

  private:
    int chapter(const std::string &name, int page) {
        const auto found = chapters_.find(name);
        if (found != chapters_.end()) return found->second;
        const int id = mark(CAIRO_PDF_OUTLINE_ROOT, name, page, CAIRO_PDF_OUTLINE_FLAG_OPEN);
        return chapters_.emplace(name, id).first->second;
    }

    int mark(int parent, const std::string &name, int page, int flags) {
        const std::string where = "page=" + std::to_string(page) + " pos=[0 0]";
        return cairo_pdf_surface_add_outline(surface_, parent, name.c_str(), where.c_str(),
                                             static_cast<cairo_pdf_outline_flags_t>(flags));
    }

    cairo_surface_t *surface_;
    std::unordered_map<std::string, int> chapters_;
};

void draw_pages(cairo_surface_t *surface, const Book &book, const pdf::CarriedFonts &fonts) {
    const pdf::Held<cairo_t> context(cairo_create(surface));
    cairo_scale(context.get(), points_per_mm, points_per_mm);
    pdf::Canvas canvas(context.get(), fonts);
    Outline outline(surface);
    int page = 0;
    for (const Sheet &sheet : book.sheets) {
        cairo_pdf_surface_set_size(surface, sheet.size.width * points_per_mm,
                                   sheet.size.height * points_per_mm);
        canvas.page(sheet);
        outline.add(sheet, ++page);
        cairo_show_page(context.get());
    }
    if (const auto status = cairo_status(context.get()); status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("PDF: ") + cairo_status_to_string(status));
}

} // namespace

std::string write_pdf(const Book &book) {
    const pdf::CarriedFonts fonts;
    std::string bytes;
    const PaperSize first = book.sheets.empty() ? size_of(Paper::a4) : book.sheets.front().size;
    const pdf::Held<cairo_surface_t> surface(cairo_pdf_surface_create_for_stream(
        &append, &bytes, first.width * points_per_mm, first.height * points_per_mm));
    cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_5);
    set_metadata(surface.get(), book);
    draw_pages(surface.get(), book, fonts);
    cairo_surface_finish(surface.get());
    if (const auto status = cairo_surface_status(surface.get()); status != CAIRO_STATUS_SUCCESS)
        throw std::runtime_error(std::string("PDF: ") + cairo_status_to_string(status));
    return pdf::finished(bytes, book);
}

} // namespace roundlay::sheets

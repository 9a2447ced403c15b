#include "modeler/window/views/way_edit.h"

#include "kernel/document/compass.h"
#include "modeler/window/desk/words.h"

#include <QRegularExpression>
#include <array>
#include <cmath>

namespace roundlay::window {

namespace {

constexpr double full_turn = 360, quarter_turn = 90;

QString without_joints(QString words) {
    return words.remove(u' ').remove(u'-').toLower();
}

/// The eight points in the language that is spoken.
std::optional<double> spoken_point(const QString &words) {
    const std::array<QString, 8> points{
        WayEdit::tr("east"), WayEdit::tr("north-east"), WayEdit::tr("north"), WayEdit::tr("north-west"),
        WayEdit::tr("west"), WayEdit::tr("south-west"), WayEdit::tr("south"), WayEdit::tr("south-east")};
    for (std::size_t i = 0; i < points.size(); ++i)
        if (without_joints(words) == without_joints(points[i])) return static_cast<double>(i) * full_turn / 8;
    return {};
}

/// Of the compass, clockwise from north.
std::optional<double> typed_degrees(QString words) {
    static const QRegularExpression unit(QStringLiteral("\\s*(°|deg|degrees)$"));
    bool is_number = false;
    const double degrees = words.remove(unit).replace(u',', u'.').toDouble(&is_number);
    if (!is_number || !(degrees >= 0 && degrees <= full_turn)) return {};
    const double heading = std::fmod(full_turn + quarter_turn - degrees, full_turn);
    return heading;
}

/// As spoken, as the document writes it, or in degrees.
std::optional<double> typed_heading(const QString &words) {
    if (const auto degrees = typed_degrees(words)) return degrees;
    if (const auto point = spoken_point(words)) return point;
    return parse_heading(words.toStdString());
}

MeasureError no_direction(const QString &words) {
    const QString what = words.isEmpty() ? WayEdit::tr("the direction is missing")
                                         : WayEdit::tr("%1 is no direction").arg(words);
    return {0, what.toStdString(),
            WayEdit::tr("degrees of the compass from 0 to 360, such as 135, or a word such as south-east")
                .toStdString()};
}

} // namespace

WayEdit::WayEdit(QWidget *parent) : LengthEdit(parent) {
    constexpr int wide = 220;
    setMinimumWidth(wide);
}

std::optional<MeasureError> WayEdit::read(const QString &typed) {
    const QRegularExpression parted(QStringLiteral("^(.*?)\\s+(?:at|%1)(?:\\s+(.*))?$").arg(tr("at")),
                                    QRegularExpression::CaseInsensitiveOption);
    const auto found = parted.match(typed.trimmed());
    if (!found.hasMatch()) {
        heading_.reset();
        return LengthEdit::read(typed);
    }
    const QString words = found.captured(2).trimmed();
    const auto heading = typed_heading(words);
    if (!heading) return no_direction(words);
    heading_ = heading;
    return LengthEdit::read(found.captured(1));
}

} // namespace roundlay::window

// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheets/sheet_support.hpp"
#include "support/catch.hpp"

#include <QFontDatabase>
#include <QProcess>
#include <QStandardPaths>
#include <QTextStream>

namespace bw::test {

std::vector<TextItem> textsOf(const SheetPage& page) {
    std::vector<TextItem> texts;
    for (const Item& item : page.items)
        if (const auto* text = std::get_if<TextItem>(&item)) texts.push_back(*text);
    return texts;
}

std::vector<TextItem> textsOf(const Layout& layout) {
    std::vector<TextItem> texts;
    for (const SheetPage& page : layout.pages)
        for (TextItem& text : textsOf(page)) texts.push_back(std::move(text));
    return texts;
}

QStringList textsOf(const SheetPage& page, Rank rank, Ink ink) {
    QStringList texts;
    for (const TextItem& text : textsOf(page))
        if (text.rank == rank && text.ink == ink) texts << text.text;
    return texts;
}

QString allText(const Layout& layout) {
    QStringList texts;
    for (const TextItem& text : textsOf(layout)) texts << text.text;
    return texts.join(QLatin1Char(' '));
}

QStringList labelsOf(const SheetPage& page) { return textsOf(page, Rank::Key, Ink::Accent); }

std::string overflowText(const Layout& layout) {
    static const char* kinds[] = {"Room", "Paper", "Overlap"};
    QString out;
    QTextStream lines(&out);
    for (const Overflow& o : overflowOf(layout))
        lines << "page " << o.page + 1 << " " << kinds[static_cast<int>(o.kind)] << ": " << o.text
              << " [" << o.box.x() << " " << o.box.y() << " " << o.box.width() << " "
              << o.box.height() << "]\n";
    return out.toStdString();
}

std::vector<SheetOptions> everyPaper(const QString& family) {
    std::vector<SheetOptions> all;
    for (const Paper paper : {Paper::A4, Paper::Letter, Paper::A3})
        for (const Orientation turn : {Orientation::Portrait, Orientation::Landscape}) {
            SheetOptions options;
            options.paper = paper;
            options.orientation = turn;
            options.family = family;
            all.push_back(options);
        }
    return all;
}

bool installed(const QString& family) { return QFontDatabase::families().contains(family); }

QString outputOf(const QString& program, const QStringList& arguments) {
    if (QStandardPaths::findExecutable(program).isEmpty()) {
        WARN(program.toStdString() + " is not installed (package poppler-utils): not checked");
        return {};
    }
    QProcess process;
    process.start(program, arguments);
    REQUIRE(process.waitForFinished(30'000));
    REQUIRE(process.exitCode() == 0);
    return QString::fromUtf8(process.readAllStandardOutput());
}

} // namespace bw::test

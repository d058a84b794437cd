// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/handbook/handbook_pages.hpp"

#include <QCoreApplication>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>

// Outside any namespace, as Qt wants it: the resources are in a static library.
static void loadHandbook() { Q_INIT_RESOURCE(handbook); }

namespace bw {

namespace {
// Stands on a line of its own before the heading of what is for other readers.
const QString kLeftOut = QStringLiteral("<!-- not in the handbook -->");

QString tr(const char* text) { return QCoreApplication::translate("handbook", text); }

QString textOf(const QString& file) {
    QFile stored(QStringLiteral(":/handbook/") + file);
    return stored.open(QIODevice::ReadOnly) ? QString::fromUtf8(stored.readAll()) : QString();
}

QString withoutMarks(QString title) {
    static const QRegularExpression link(QStringLiteral(R"(\[([^\]]*)\]\([^)]*\))")),
        mark(QStringLiteral("[`*]"));
    return title.replace(link, QStringLiteral("\\1")).remove(mark).trimmed();
}

// 0: the line is no heading.
int levelOf(const QString& line) {
    int level = 0;
    while (level < line.size() && line[level] == u'#') ++level;
    return level <= 6 && level < line.size() && line[level] == u' ' ? level : 0;
}

class Cutter {
public:
    void take(const QString& line) {
        if (line.startsWith(QLatin1String("```"))) fenced_ = !fenced_;
        const int level = fenced_ ? 0 : levelOf(line);
        if (level) begin(line.mid(level + 1), level);
        if (line == kLeftOut)
            skipNext_ = true;
        else if (!level && skipping_ == 0 && !headings_.isEmpty())
            headings_.back().text += line + u'\n';
    }
    [[nodiscard]] QList<HandbookHeading> headings() && { return std::move(headings_); }

private:
    // What is left out goes on to the next heading that is no part of it.
    void begin(const QString& title, int level) {
        if (skipping_ && level <= skipping_) skipping_ = 0;
        if (skipNext_) skipping_ = level;
        skipNext_ = false;
        if (skipping_) return;
        headings_ << HandbookHeading{withoutMarks(title), handbookAnchor(title), level, {}};
    }

    QList<HandbookHeading> headings_;
    int skipping_ = 0; // the level of what is left out
    bool skipNext_ = false, fenced_ = false;
};

void addWhole(QList<HandbookPage>& pages, HandbookGroup group, const char* file) {
    const QString name = QLatin1String(file);
    auto headings = handbookHeadings(textOf(name));
    if (!headings.isEmpty()) pages << HandbookPage{group, name, std::move(headings)};
}

void addParts(QList<HandbookPage>& pages, HandbookGroup group, const char* file) {
    const QString name = QLatin1String(file);
    bool begun = false; // what stands before is for who reads the document by itself
    for (HandbookHeading& heading : handbookHeadings(textOf(name))) {
        if (heading.level == 2) pages << HandbookPage{group, name, {}};
        begun = begun || heading.level == 2;
        if (begun) pages.back().headings << std::move(heading);
    }
}
} // namespace

QString handbookAnchor(const QString& title) {
    QString anchor;
    for (const QChar c : withoutMarks(title).toLower())
        if (c.isLetterOrNumber() || c == u'-' || c == u'_')
            anchor += c;
        else if (c == u' ')
            anchor += u'-';
    return anchor;
}

QList<HandbookHeading> handbookHeadings(const QString& markdown) {
    static const QRegularExpression comment(QStringLiteral("<!--(?! not in the handbook).*?-->"),
                                            QRegularExpression::DotMatchesEverythingOption);
    Cutter cutter;
    for (const QString& line : QString(markdown).remove(comment).split(u'\n')) cutter.take(line);
    return std::move(cutter).headings();
}

QString HandbookPage::markdown() const {
    QString text;
    for (const HandbookHeading& h : headings)
        text += QString(h.level, u'#') + u' ' + h.title + QStringLiteral("\n") + h.text;
    return text;
}

QString HandbookPage::place(int heading) const { return file + u'#' + headings[heading].anchor; }

const QList<HandbookPage>& handbookPages() {
    static const QList<HandbookPage> pages = [] {
        loadHandbook();
        QList<HandbookPage> all;
        addWhole(
            all, [] { return tr("To begin with"); }, "first-month.md");
        addParts(
            all, [] { return tr("The guide"); }, "guide.md");
        for (const char* file : {"rules.md", "balance.md", "floor.md", "proposals.md", "ledger.md",
                                 "sheets.md", "gym-file.md"})
            addWhole(
                all, [] { return tr("How it is reckoned"); }, file);
        return all;
    }();
    return pages;
}

HandbookSpot handbookSpot(const QString& place) {
    const QString file = place.section(u'#', 0, 0), anchor = place.section(u'#', 1);
    const QList<HandbookPage>& pages = handbookPages();
    for (int p = 0; p < pages.size(); ++p) {
        if (pages[p].file != file) continue;
        if (anchor.isEmpty()) return {p, 0};
        for (int h = 0; h < pages[p].headings.size(); ++h)
            if (pages[p].headings[h].anchor == anchor) return {p, h};
    }
    return {};
}

QString handbookPlace(const QString& file, const QString& link) {
    return link.startsWith(u'#') ? file + link : link;
}

} // namespace bw

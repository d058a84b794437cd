// SPDX-License-Identifier: GPL-3.0-or-later
// The Handbook: the documents for a coach (docs/*.md), which the program carries inside itself, cut
// into pages. A place in it is written as a link in the documents is: "guide.md#the-stair".
#pragma once
#include <QList>
#include <QString>

namespace bw {

struct HandbookHeading {
    QString title;  // without marks
    QString anchor; // as links name it
    int level = 1;  // 1 to 6
    QString text;   // what stands below it, up to the next heading; marks and all
};

using HandbookGroup = QString (*)(); // in the language of the window

// A whole document, or, of the guide, what stands below one heading of level 2.
struct HandbookPage {
    HandbookGroup group = nullptr;   // where it stands in the contents
    QString file;                    // "guide.md"
    QList<HandbookHeading> headings; // the first is the page's own

    [[nodiscard]] QString title() const { return headings.front().title; }
    [[nodiscard]] QString markdown() const;
    [[nodiscard]] QString place(int heading) const;
};

struct HandbookSpot {
    int page = -1, heading = -1; // -1: the Handbook has no such place
    [[nodiscard]] bool found() const { return page >= 0; }
    friend bool operator==(const HandbookSpot&, const HandbookSpot&) = default;
};

// Read at the first call; a document that can't be read is a bug and has no page.
[[nodiscard]] const QList<HandbookPage>& handbookPages();
// A file alone means its first page.
[[nodiscard]] HandbookSpot handbookSpot(const QString& place);
// What a link on a page of `file` means as a place: "#findings" is "guide.md#findings" there.
[[nodiscard]] QString handbookPlace(const QString& file, const QString& link);

// A document as its headings, in order; parts that are marked as not for the Handbook left out.
[[nodiscard]] QList<HandbookHeading> handbookHeadings(const QString& markdown);
// How a link names a heading: "The Minute rail" is "the-minute-rail".
[[nodiscard]] QString handbookAnchor(const QString& title);

} // namespace bw

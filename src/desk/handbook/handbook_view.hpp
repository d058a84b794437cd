// SPDX-License-Identifier: GPL-3.0-or-later
// One page of the Handbook to read. Tab goes from link to link, Enter follows one.
#pragma once
#include "desk/handbook/handbook_pages.hpp"

#include <QTextBrowser>

namespace bw {

class HandbookPictures;

class HandbookView : public QTextBrowser {
    Q_OBJECT
public:
    explicit HandbookView(QWidget* parent);

    void show(HandbookSpot spot); // which must be found; a heading of -1 is the top
    [[nodiscard]] HandbookSpot spot() const { return spot_; }
    // All places where a word of these begins are marked on every page, until there are none.
    void mark(const QStringList& words);
    [[nodiscard]] int marked() const { return static_cast<int>(extraSelections().size()); }
    // The nearest marked word behind the heading comes into sight; without one, the heading.
    void showFirstMark();

Q_SIGNALS:
    void placeWanted(const QString& place); // a link was followed

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void doSetSource(const QUrl&, QTextDocument::ResourceType) override {} // nothing by itself

private:
    void set();
    void setColumn();
    void scrollTo(int block);
    void markAgain();

    HandbookPictures* pictures_;
    HandbookSpot spot_;
    QStringList words_;
};

} // namespace bw

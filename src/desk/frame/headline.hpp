// SPDX-License-Identifier: GPL-3.0-or-later
// The line on top of every page: which month it is and how it stands. Where it does not fit into
// one line it takes two.
#pragma once
#include <QWidget>

class QBoxLayout;

namespace bw {

class Actions;
class Draft;
class Notice;

class Headline : public QWidget {
    Q_OBJECT
public:
    Headline(Draft& draft, const Actions& actions, Notice& notice, QWidget* parent);
    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    QWidget* monthPart(Draft& draft, const Actions& actions, Notice& notice);
    QWidget* standPart(Draft& draft, const Actions& actions);
    [[nodiscard]] bool fitsOneLine(int width) const;

    QWidget *month_, *stand_;
    QBoxLayout* layout_;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// One page of a laid-out sheet on the desk, as large as fits. Page Up and Page Down turn, + and -
// bring it nearer, 0 fits it again, arrows move it.
#pragma once
#include "sheets/page.hpp"

#include <QAbstractScrollArea>

namespace bw {

class SheetPreview : public QAbstractScrollArea {
    Q_OBJECT
public:
    explicit SheetPreview(QWidget* parent);

    void show(Layout layout, const QString& name);   // stays on its page while there is one
    void clear(const QString& why);                  // a sentence in place of a page
    [[nodiscard]] int page() const { return page_; } // from 0
    [[nodiscard]] int pages() const { return static_cast<int>(layout_.pages.size()); }
    [[nodiscard]] double zoom() const { return zoom_; } // 1: the whole page fits
    void turn(int pages);
    void setZoom(double zoom); // 1 to 6

Q_SIGNALS:
    void changed(); // pages, page or zoom

protected:
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void measure();
    void describe();
    [[nodiscard]] QRectF paperRect() const; // in the viewport

    Layout layout_;
    QString name_, empty_;
    int page_ = 0;
    double zoom_ = 1;
};

} // namespace bw

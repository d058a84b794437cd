// SPDX-License-Identifier: GPL-3.0-or-later
// The slim column on the left: the places of the program, each with its drawing and its word.
#pragma once
#include <QWidget>

class QAction;
class QButtonGroup;
class QToolButton;
class QVBoxLayout;

namespace bw {

class PlacesColumn : public QWidget {
    Q_OBJECT
public:
    explicit PlacesColumn(QWidget* parent);
    // The action goes to the place; the button follows what it says and whether it is checked.
    void add(const QString& icon, QAction* go);

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void recolour();
    QVBoxLayout* layout_;
    QList<std::pair<QToolButton*, QString>> buttons_; // with the name of its drawing
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// One line over the Floor: who comes, how they start, how varied they are. The week is that of the
// line on top of the window.
#pragma once
#include "blockwright/floor/options.hpp"
#include "blockwright/model/result.hpp"
#include "desk/floor/lane_plan.hpp"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QHBoxLayout;
class QLabel;
class QLineEdit;
class QSpinBox;

namespace bw {

class FloorControls : public QWidget {
    Q_OBJECT
public:
    explicit FloorControls(QWidget* parent);

    // The gym's places: so many come unless the coach says otherwise.
    void setPlaces(int places);
    // Without targets. Why() when the head counts can't be read.
    [[nodiscard]] Result<FloorOptions> options() const;

    [[nodiscard]] LaneOrder order() const;

Q_SIGNALS:
    void changed(); // options()
    void orderChanged();

private:
    QComboBox* choice(const char* name, const QStringList& words);
    void label(QHBoxLayout* row, const QString& text, QWidget* buddy);
    void startChosen();

    QSpinBox* members_;
    QComboBox *start_, *mix_, *order_;
    QCheckBox* loads_;
    QLineEdit* heads_;
    int places_ = 0; // not told yet
};

} // namespace bw

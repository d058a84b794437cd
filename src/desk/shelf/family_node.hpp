// SPDX-License-Identifier: GPL-3.0-or-later
// One exercise in the drawing of a family, or the empty place where one can be added.
#pragma once
#include "blockwright/model/id.hpp"
#include "edit/shelf_verbs.hpp"

#include <QAbstractButton>

#include <optional>

namespace bw {

class FamilyNode : public QAbstractButton {
    Q_OBJECT
public:
    // No kin: the exercise itself. No exercise: the place to add one.
    struct Who {
        std::optional<Kin> kin;
        std::optional<ExerciseId> exercise;
        QString name;
        bool faint = false; // retired, or not on the Shelf
    };
    FamilyNode(Who who, QWidget* parent);
    void setWho(Who who);

    [[nodiscard]] const Who& who() const { return who_; }
    [[nodiscard]] int heightFor(int width) const;

Q_SIGNALS:
    void moved(int dx, int dy); // an arrow key
    void removeWanted();
    void left();
    void leaving(); // by Tab, which goes on from the exercise itself

protected:
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QFont printFont() const;

    Who who_;
};

[[nodiscard]] QString kinName(Kin kin); // "easier"

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// The gym and its kit on one sheet of paper. In a gym without months it leads on to the first one,
// else back to where the coach came from.
#pragma once
#include "blockwright/model/kit_use.hpp"

#include <QWidget>

#include <cstdint>

class QLabel;
class QPushButton;

namespace bw {

class Draft;
class GymLines;
class GymTable;
class KitModel;
class KitTable;

class GymPage : public QWidget {
    Q_OBJECT
public:
    GymPage(Draft& draft, QWidget* parent); // the draft must outlive it
    ~GymPage() override;                    // what is being typed is stored

    // What a new gym begins with: it has no month, and owns none of the kit it knows.
    [[nodiscard]] static bool comesFirst(const Gym& gym);

Q_SIGNALS:
    void closed();
    void monthWanted(); // the first

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeHead();
    QLayout* makeTables();
    void wire();
    void draftChanged();
    void refresh();
    void offer(); // what to do next
    void takeUsual();
    void showGymLine();
    void showKitLine();
    void tellLoss(const KitId& id, const KitLoss& loss);

    Draft& draft_;
    GymLines* lines_;
    KitModel* kit_;
    GymTable* gymTable_;
    KitTable* kitTable_;
    QLabel *lead_, *lost_, *about_;
    QPushButton *usual_, *start_, *back_;
    bool stale_ = true;       // the draft has changed since it was shown here
    std::uint64_t shown_ = 0; // gymRevision() of what is shown
};

} // namespace bw

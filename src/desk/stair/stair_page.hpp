// SPDX-License-Identifier: GPL-3.0-or-later
// The Stair: the weeks as steps, under them what they add up to and what they ask of each slot; on
// the right what that is for one member.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/stair/stair_member.hpp"

#include <QWidget>

class QLabel;

namespace bw {

class Actions;
class LoadModel;
class StairMemberPanel;
class SlotModel;
class StairView;
class WeekTable;

class StairPage : public QWidget {
    Q_OBJECT
public:
    StairPage(Draft& draft, Actions& actions, QWidget* parent); // both must outlive it
    ~StairPage() override;

Q_SIGNALS:
    void picked(); // after Draft::setPlace: show the row
    void refused(const bw::Message& why);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    QWidget* makePaper();
    void wire();
    void draftChanged();
    void refresh();
    void readMember();
    void showMember();
    void toFirstEstimate();
    [[nodiscard]] std::optional<Place> usualPlace() const;
    void tell(const QModelIndex& cell);
    void moved(const QModelIndex& to);
    void followPlace(Place place);
    void fitSizes();

    Draft& draft_;
    StairView* stair_;
    LoadModel* loads_;
    SlotModel* slots_;
    WeekTable *loadTable_, *slotTable_;
    StairMemberPanel* panel_;
    QLabel *caveats_, *sentence_;
    std::optional<Place> place_; // the slot on show
    std::optional<Month> month_; // of its month
    std::optional<MemberResults> results_;
    std::uint64_t revision_ = 0; // of the gym when results_ were read
    Gym::BlockPtr shown_;        // what the tables tell
    std::optional<MemberStair> member_;
    bool stale_ = true, filling_ = false;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// What members lifted: the grid of a class, and beside it the member whose row the attention is on.
// Has its own date, which need not be of the month that the Bench shows.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/ledger/class_day.hpp"

#include <QWidget>

class QLabel;

namespace bw {

class ClassModel;
class ClassView;
class DayBar;
class MemberPanel;

class LedgerPage : public QWidget {
    Q_OBJECT
public:
    LedgerPage(Draft& draft, Date today, QWidget* parent);

    void showDay(Date date);
    [[nodiscard]] ClassView& grid() { return *view_; }
    [[nodiscard]] ClassModel& model() { return *model_; }
    [[nodiscard]] MemberPanel& panel() { return *panel_; }
    [[nodiscard]] DayBar& bar() { return *bar_; }
    [[nodiscard]] const Member* member() const; // that the attention is on; null: none
    void goTo(const MemberId& member);          // if they are in the grid

Q_SIGNALS:
    void memberChanged(); // the attention is on another, or on none
    void refused(const bw::Message& why);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void assemble();
    void follow();
    void refresh(); // another day, or the gym has changed
    void fill();    // other members are to be shown
    void tell(const QString& words, bool trouble);
    void tellCell(const QModelIndex& cell);
    void tellClass();
    [[nodiscard]] std::vector<MemberId> wanted() const;
    [[nodiscard]] QString emptyText() const;
    [[nodiscard]] int firstColumn() const;

    struct Told { // what the panel shows
        std::optional<MemberId> member;
        std::optional<ExerciseId> exercise;
        std::uint64_t revision = 0;
        std::shared_ptr<ClassDay> day;
        bool operator==(const Told&) const = default;
    };

    Draft& draft_;
    DayBar* bar_;
    ClassModel* model_;
    ClassView* view_;
    MemberPanel* panel_;
    QLabel* sentence_;
    std::shared_ptr<ClassDay> day_;
    std::uint64_t gymRevision_ = 0, revision_ = 0; // of what is shown
    Told told_;
    Connection listening_;
};

} // namespace bw

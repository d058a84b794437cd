// SPDX-License-Identifier: GPL-3.0-or-later
// Beside the stair: whose loads are shown, and what the slot on show asks of them.
#pragma once
#include "desk/stair/stair_member.hpp"

#include <QWidget>

class QComboBox;
class QLabel;
class QStackedWidget;
class QTextBrowser;

namespace bw {

class EstimateRuler;

class StairMemberPanel : public QWidget {
    Q_OBJECT
public:
    explicit StairMemberPanel(QWidget* parent);

    void setMembers(const std::vector<Member>& members); // the active ones are offered
    [[nodiscard]] std::optional<MemberId> member() const { return member_; }
    struct Shown {
        const Gym& gym;
        const Block& block;
        std::optional<Place> place; // of a slot
        const MemberStair* member;  // null: nobody chosen
        int week;
    };
    void show(const Shown& shown);
    void showTrouble(const QString& why);
    void goTo(); // to choose a member

Q_SIGNALS:
    void chosen();

private:
    void choose(const std::optional<MemberId>& member);
    void typed();
    void follow(); // what the box says

    QComboBox* box_;
    QLabel *about_, *empty_;
    EstimateRuler* ruler_;
    QTextBrowser* page_;
    QStackedWidget* stack_;
    std::vector<std::pair<MemberId, QString>> offered_;
    std::optional<MemberId> member_;
};

} // namespace bw

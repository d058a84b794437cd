// SPDX-License-Identifier: GPL-3.0-or-later
// A member's name, whether they come, and their flags: one step when it is accepted.
#pragma once
#include "blockwright/model/member.hpp"

#include <QDialog>

class QCheckBox;
class QLabel;
class QLineEdit;
class QVBoxLayout;

namespace bw {

class MemberDialog : public QDialog {
    Q_OBJECT
public:
    MemberDialog(Member member, bool fresh, QWidget* parent);
    [[nodiscard]] Member member() const; // as it stands in the fields
    void addFlag(const Flag& flag);

private:
    class FlagLine;
    void assemble(bool fresh);
    void accepting();

    Member member_;
    QLineEdit* name_;
    QCheckBox* active_;
    QVBoxLayout* flags_;
    QLabel *about_, *trouble_;
    std::vector<FlagLine*> lines_;
};

} // namespace bw

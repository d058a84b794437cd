// SPDX-License-Identifier: GPL-3.0-or-later
// What the coach has accepted in this month, below the findings: a line that opens to the list.
#pragma once
#include "desk/bench/findings_list.hpp"

#include <QWidget>

namespace bw {

class FoldHead;

class AcceptedFold : public QWidget {
    Q_OBJECT
public:
    explicit AcceptedFold(QWidget* parent);

    void renew(const std::vector<AcceptedFinding>& accepted, const Block* block); // none: it hides
    [[nodiscard]] const FindingRow& at(int row) const { return model_->at(row); }

Q_SIGNALS:
    void chosen(int row);
    void goWanted(int row);
    void takeBackWanted(int row);
    void limitWanted(int row);
    void ruleWanted(int row);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fold();
    void fit();

    FindingsModel* model_;
    FindingsList* list_;
    FoldHead* head_;
};

} // namespace bw

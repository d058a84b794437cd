// SPDX-License-Identifier: GPL-3.0-or-later
// The balance beside the sheet: the beams, and under them the tallies by pattern. Both fold; what
// the coach chose is remembered, and till then the tallies show where there is room for them.
#pragma once
#include "blockwright/balance/rows.hpp"

#include <QFrame>

namespace bw {

class BeamView;
class Draft;
class FoldHead;
class TallyList;
class TallyModel;

class BeamPanel : public QFrame {
    Q_OBJECT
public:
    BeamPanel(Draft& draft, QWidget* parent); // the draft must outlive it

    void goTo(); // opens it and takes the focus

Q_SIGNALS:
    void picked(); // rows are marked, and the coach wants to be there

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void assemble();
    void wire();
    void refresh();
    void unfoldWhereRoom();
    void fold();
    void mark(const std::vector<Pattern>& patterns, bool go);

    Draft& draft_;
    TallyModel* tallies_;
    BeamView* beams_;
    TallyList* list_;
    FoldHead *all_, *bars_;
};

} // namespace bw

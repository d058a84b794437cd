// SPDX-License-Identifier: GPL-3.0-or-later
// The Bench: the sheet of paper in the middle, the findings beside it, the minute rail under both.
#pragma once
#include "blockwright/model/message.hpp"
#include "blockwright/model/place.hpp"

#include <QWidget>

class QLabel;
class QModelIndex;

namespace bw {

class Actions;
class BeamPanel;
class Draft;
class FindingsPanel;
class FloorRunner;
class ProposeStrip;
class SheetModel;
class SheetView;

class BenchPage : public QWidget {
    Q_OBJECT
public:
    BenchPage(Draft& draft, FloorRunner& floor, Actions& actions, QWidget* parent);
    ~BenchPage() override; // what is being typed is entered

    [[nodiscard]] FindingsPanel& findings() { return *findings_; }
    [[nodiscard]] SheetView& sheet() { return *sheet_; }
    [[nodiscard]] BeamPanel& beam() { return *beam_; }
    [[nodiscard]] ProposeStrip& proposals() { return *propose_; }
    void propose(void (ProposeStrip::*ask)()); // what is being typed is entered first

public Q_SLOTS:
    void tell(const bw::Message& what); // under the sheet, until something else happens
    void quiet();

Q_SIGNALS:
    void floorWanted();
    void limitWanted(const QString& key); // of the house limits

private:
    void assemble(FloorRunner& floor);
    QWidget* makeSide(QWidget* parent);
    void addActions(Actions& actions);
    void addMoves(Actions& actions);
    void addNew(const QModelIndex& index, const QString& name);
    [[nodiscard]] Place groupHere() const;

    Draft& draft_;
    SheetModel* model_;
    SheetView* sheet_;
    FindingsPanel* findings_;
    BeamPanel* beam_ = nullptr;
    ProposeStrip* propose_;
    QLabel* notice_;
};

} // namespace bw

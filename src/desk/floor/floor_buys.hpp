// SPDX-License-Identifier: GPL-3.0-or-later
// What ends the class earlier: changes of the draft, which can be applied here, then kit and
// members, which only the coach can change.
#pragma once
#include "blockwright/floor/study.hpp"
#include "desk/floor/floor_view.hpp"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace bw {

struct FloorChange {
    Message label;
    Place place;
    std::function<void(Block&)> change;
};

class FloorBuys : public QWidget {
    Q_OBJECT
public:
    explicit FloorBuys(QWidget* parent);
    // `week`: what the study of the month has proven; null while that is not there.
    void show(const FloorView& view, const FloorWeek* week, bool writable);

Q_SIGNALS:
    void applyWanted(const bw::FloorChange& change);

private:
    struct Row {
        QString text;
        std::optional<FloorChange> change;
    };
    [[nodiscard]] static std::vector<Row> rowsOf(const FloorView& view, const FloorWeek* week);
    [[nodiscard]] static Row rowOf(const FloorView& view, const FloorBuy& buy);
    void fill(const std::vector<Row>& rows);
    void add(int line, const Row& row);

    bool writable_ = true;
    std::vector<QString> shown_; // what stands there, to leave it alone when nothing changed
    QWidget* body_ = nullptr;
    QLabel* empty_;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// The Almanac: the months side by side. Formats and what was new on top, exercises by pattern in
// the middle, ratios below; all three tables scroll through the months together.
#pragma once
#include "desk/almanac/almanac_filter.hpp"
#include "desk/almanac/almanac_model.hpp"
#include "desk/bench/draft.hpp"

#include <QWidget>

#include <array>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace bw {

class AlmanacView;

class AlmanacPage : public QWidget {
    Q_OBJECT
public:
    AlmanacPage(Draft& draft, QWidget* parent); // the draft must outlive it

    [[nodiscard]] AlmanacView& table(int which) {
        return *views_.at(static_cast<std::size_t>(which));
    }
    // The month of the cursor; none in a gym without months.
    [[nodiscard]] std::optional<Month> month() const;
    void startNext(); // a copy of the cursor's month, then to the Bench

Q_SIGNALS:
    void benchWanted(); // the month to look at is on show
    void refused(const bw::Message& why);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void assemble();
    QWidget* makeBar();
    void addTable(QVBoxLayout* column, int which, const QString& name);
    void wire(int which);
    void draftChanged(); // a page out of sight is filled when it is next shown
    void refresh();
    void fill();
    void fitSizes();
    void setColumn(int column);
    void tell(const QModelIndex& cell);
    [[nodiscard]] int columnOf(std::optional<Month> month) const;
    [[nodiscard]] int scrollBarWidth() const;
    void open(int column, const std::optional<ExerciseId>& exercise);

    Draft& draft_;
    std::shared_ptr<const Almanac> almanac_;
    std::uint64_t revision_ = 0; // of the gym when almanac_ was made
    std::optional<Month> shown_; // then
    bool stale_ = true;
    int column_ = -1;
    std::size_t active_ = 1;                // the table of the cursor
    std::array<AlmanacModel*, 3> models_{}; // turns, exercises, ratios
    std::array<AlmanacView*, 3> views_{};
    QLineEdit* filter_ = nullptr;
    QComboBox* span_ = nullptr;
    QLabel *count_ = nullptr, *sentence_ = nullptr;
    QPushButton* start_ = nullptr;
};

} // namespace bw

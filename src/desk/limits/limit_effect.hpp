// SPDX-License-Identifier: GPL-3.0-or-later
// What one limit does to the month on show: what would be found if it were moved, and what is
// measured against it now.
#pragma once
#include "blockwright/rules/house_limits.hpp"
#include "blockwright/rules/shift.hpp"

#include <QTextBrowser>

namespace bw {

class Draft;

class LimitEffect : public QTextBrowser {
    Q_OBJECT
public:
    LimitEffect(Draft& draft, QWidget* parent); // the draft must outlive it

    // A rule alone, or a limit of it, or nothing; `typed`: the value that is being typed, none:
    // nothing is, or it can't be read yet. An inner none is the rule book's.
    void show(const Rule* rule, const HouseLimit* limit,
              const std::optional<std::optional<LimitValue>>& typed = {});

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    [[nodiscard]] Shift shiftTo(const HouseLimit& limit,
                                const std::optional<LimitValue>& value) const;
    [[nodiscard]] QString about(const Rule* rule, const HouseLimit* limit) const;
    [[nodiscard]] QString measured(const HouseLimit& limit) const;
    [[nodiscard]] QString moved(const HouseLimit& limit, const std::optional<LimitValue>& value,
                                const QString& head) const;
    [[nodiscard]] QString effect(const HouseLimit& limit,
                                 const std::optional<std::optional<LimitValue>>& typed) const;

    void draw();

    Draft& draft_;
    const Rule* rule_ = nullptr; // null: nothing is shown
    const HouseLimit* limit_ = nullptr;
    std::optional<std::optional<LimitValue>> typed_;
};

} // namespace bw

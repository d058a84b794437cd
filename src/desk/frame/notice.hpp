// SPDX-License-Identifier: GPL-3.0-or-later
// A quiet line above the page when something could not be done, or was done elsewhere: no box to
// click away, and nothing that was typed is lost. It is read out by a screen reader and goes with
// the next change.
#pragma once
#include "blockwright/model/result.hpp"

#include <QFrame>

#include <functional>

class QLabel;
class QToolButton;

namespace bw {

class Notice : public QFrame {
    Q_OBJECT
public:
    explicit Notice(QWidget* parent);

    void tell(const Message& what);
    // Tells of a verb that failed; one that did not is of no interest.
    template <class T> bool hear(const Result<T>& did) {
        if (!did) tell(did.why());
        return did.ok();
    }
    // A way on beside what was just told.
    void offer(const QString& words, const std::function<void()>& go);
    void quiet();
    [[nodiscard]] QString text() const;

private:
    QLabel* words_;
    QToolButton *way_, *away_;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals under the sheet. The answer at hand is the draft's preview, so that every place of the
// Bench measures it; nothing is stored before Enter, which is one step to undo. Left and Right go
// through the answers, Esc leaves everything as it was. Whatever else changes the draft ends it.
#pragma once
#include "desk/bench/draft.hpp"
#include "desk/propose/propose_runner.hpp"

#include <QFrame>

class QLabel;
class QPushButton;
class QScrollArea;

namespace bw {

class ProposeStrip : public QFrame {
    Q_OBJECT
public:
    ProposeStrip(Draft& draft, QWidget* parent, // hidden; the draft must outlive it
                 std::chrono::milliseconds longest = ProposeRunner::kLongest);

    void askAll();     // every open slot
    void askSlot();    // the one where the attention is, open or to be exchanged
    void askSection(); // its section's open slots
    void askMonth();   // the whole session anew

    void stop(); // looking, and keep the best so far
    void step(int by);
    void apply();
    void leave() { end(before_); }

    [[nodiscard]] bool looking() const { return state_ == State::Looking; }
    [[nodiscard]] const ProposedMonth* answer() const;      // on show; null: none
    [[nodiscard]] bool playing() const { return playing_; } // the classes of the answers

Q_SIGNALS:
    void lookingChanged();
    void progressed(double best, double bound); // penalties, while it is looking
    void left();                                // by itself or by the coach, who was here
    void failed(bw::Message why); // the answer could not be stored, and is still on show

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; // of its buttons
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void focusOutEvent(QFocusEvent* event) override;

private:
    enum class State { Away, Looking, Refused, Shown };
    void assemble();
    QPushButton* button(const QString& text, const QString& name, void (ProposeStrip::*press)());
    void back() { step(-1); }
    void next() { step(1); }
    void ask(ProposeOptions options, Message step);
    void take(const ProposeRunner::Found& found);
    void takePlayed(const ProposeRunner::Found& found);
    void refuse(const Message& why);
    void enter(State state);
    void setState(State state);
    void say(const QString& words);
    void offer();
    void mark(const ProposedMonth& answer);
    void fit();
    void follow();
    void end(Place attention);
    void close();
    [[nodiscard]] bool here() const; // the keyboard is

    Draft& draft_;
    ProposeRunner runner_;
    QLabel *words_, *chosen_, *shift_;
    QScrollArea* body_;
    QPushButton *stop_, *back_, *next_, *apply_, *leave_;
    State state_ = State::Away;
    Message step_;        // what undo calls it
    Place before_;        // where the attention was
    Gym::BlockPtr about_; // the block that is proposed for, or the proposal on show
    std::uint64_t revision_ = 0;
    bool mine_ = false; // a change of the draft is made here
    Proposal proposal_;
    std::size_t at_ = 0;
    bool stepped_ = false; // the coach has chosen what to look at
    bool playing_ = false;
};

} // namespace bw

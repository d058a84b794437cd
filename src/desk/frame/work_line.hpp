// SPDX-License-Identifier: GPL-3.0-or-later
// Long work, done in the window's own thread: what it is, how far it has come, and Stop. While it
// runs the rest of the program takes no input, so that nothing changes under the work.
//
//   WorkLine::Run run(line, tr("Writing results"), total);
//   each step: if (!run.at(done)) break; // stopped
#pragma once
#include <QElapsedTimer>
#include <QPointer>
#include <QWidget>

#include <chrono>

class QLabel;
class QProgressBar;
class QPushButton;

namespace bw {

class WorkLine : public QWidget {
    Q_OBJECT
public:
    // Between two looks at the keyboard; the work goes on for so long unseen.
    static constexpr std::chrono::milliseconds kBlink{40};
    explicit WorkLine(QWidget* parent, std::chrono::milliseconds blink = kBlink);

    class Run {
    public:
        Run(WorkLine& line, const QString& what, int total); // total 0: how much is not known
        ~Run();
        Run(const Run&) = delete;
        Run& operator=(const Run&) = delete;
        // False once Stop was pressed. Cheap enough to call for each step.
        [[nodiscard]] bool at(int done);

    private:
        WorkLine& line_;
        QElapsedTimer sinceShown_;
        QPointer<QWidget> focus_; // where the keyboard was
    };
    [[nodiscard]] bool running() const { return running_; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override; // of the whole program, in a run

private:
    QLabel* what_;
    QProgressBar* bar_;
    QPushButton* stop_;
    std::chrono::milliseconds blink_;
    bool running_ = false, stopped_ = false;
};

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
// What a backup holds, beside what the gym file holds now, and what a restore would do.
#pragma once
#include "desk/backups/backup_reader.hpp"

#include <QTextBrowser>

namespace bw {

class BackupPreview : public QTextBrowser {
    Q_OBJECT
public:
    explicit BackupPreview(QWidget* parent);

    void showReading(const Backup& backup);
    void show(const Backup& backup, const BackupLook& look);
    void showNothing();

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw();

    std::optional<Backup> backup_;   // none: nothing is shown
    std::optional<BackupLook> look_; // none: it is being read
};

} // namespace bw

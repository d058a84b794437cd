// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/frame/whole_file.hpp"

#include <QFile>
#include <QSaveFile>

namespace bw {

Result<bool> writeParts(const QString& path, const std::function<Result<std::string>()>& next) {
    QSaveFile out(path);
    bool good = out.open(QIODevice::WriteOnly);
    while (good) {
        const auto part = next();
        if (!part) return part.why(); // nothing is committed
        if (part->empty()) break;
        const auto size = static_cast<qint64>(part->size());
        good = out.write(part->data(), size) == size;
    }
    if (good && out.commit()) return true;
    return Message{"%1 could not be written: %2. What was there before is still there.",
                   {path.toStdString(), out.errorString().toStdString()}};
}

Result<bool> writeWhole(const QString& path, const std::string& text) {
    bool given = false;
    return writeParts(path, [&] { return std::exchange(given, true) ? std::string() : text; });
}

Result<std::string> readWhole(const QString& path, std::size_t most) {
    QFile in(path);
    if (!in.open(QIODevice::ReadOnly))
        return Message{"%1 could not be read: %2.",
                       {path.toStdString(), in.errorString().toStdString()}};
    if (in.size() > static_cast<qint64>(most))
        return Message{"%1 is larger than %2 MiB: bring it in in parts.",
                       {path.toStdString(), std::to_string(most >> 20)}};
    return in.readAll().toStdString();
}

} // namespace bw

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractItemModel>
#include <QColor>
#include <QFont>
#include <QObject>
#include <QPainter>
#include <QString>
#include <QWidget>

#include <functional>
#include <memory>
#include <string>
#include <vector>

// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once
#include <QAbstractItemModel>
#include <QColor>
#include <QFont>
#include <QObject>
#include <QPainter>
#include <QString>
#if __has_include(<QWidget>) // not in the rooms without windows
#include <QWidget>
#endif

#include <functional>
#include <memory>
#include <string>
#include <vector>

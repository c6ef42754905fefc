// SPDX-License-Identifier: GPL-3.0-or-later
// Works out what lines of readings say of a rig, off the interface thread. The newest lines win.
#pragma once

#include <QObject>
#include <atomic>
#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "rigs/answers/learned.hpp"
#include "rigs/answers/read_course.hpp"
#include "rigs/answers/solution.hpp"
#include "rigs/documents/problems.hpp"
#include "rigs/readings/readings_reader.hpp"

namespace gui {

// What is asked.
struct ReadingsJob {
  std::shared_ptr<const rigs::Plan> plan;
  std::size_t rig = 0;
  std::string text;
  rigs::readings::Thermometer thermometer = {};
  rigs::readings::Corrections corrections = {};
};

// What came of it. Without readings that can be used there are only problems.
struct ReadingsFound {
  ReadingsJob of;
  rigs::Problems problems;
  rigs::readings::ReadLines read = {};
  std::optional<rigs::Learned> learned = {};
  rigs::ReadCourse course = {};
  std::optional<rigs::Solution> solution = {};  // of the plan, begun as the day of this rig did
  rigs::Told failed = {};                       // why there is nothing, where the machine failed
};
using ReadingsFoundPtr = std::shared_ptr<const ReadingsFound>;

class ReadingsWork : public QObject {
  Q_OBJECT

 public:
  explicit ReadingsWork(QObject* parent = nullptr);
  ~ReadingsWork() override;

  // Replaces what waits and what is being worked out.
  void learn(ReadingsJob job);
  bool isIdle() const;

 Q_SIGNALS:
  void found(gui::ReadingsFoundPtr found);  // on the interface thread

 private:
  void work();
  void tell(ReadingsFound found);

  mutable std::mutex mutex_;
  std::condition_variable wake_;
  std::optional<ReadingsJob> waiting_;
  std::atomic<bool> stop_ = false;
  bool busy_ = false;
  bool ending_ = false;
  std::thread worker_;
};

}  // namespace gui

Q_DECLARE_METATYPE(gui::ReadingsFoundPtr)

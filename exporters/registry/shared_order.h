// What must be in its place before what, worked out when it is first asked for, for all copies of a job.
#pragma once

#include "kernel/progress/ticked.h"

#include <atomic>
#include <mutex>

namespace roundlay {

struct ExportJob;

class SharedOrder {
  public:
    /// Of that layout, the same at each call. From any thread; who asks while another works it out waits.
    const RaisingOrder &of(const Layout &layout, const Bodies &bodies);
    bool is_known() const { return known_; } ///< asking for it takes no time

  private:
    std::once_flag once_;
    std::atomic<bool> known_ = false;
    RaisingOrder order_;
};

/// Of a job whose shell stands: without its wood it throws std::logic_error.
const RaisingOrder &raising_order_of(const ExportJob &job);
/// With what that record has ticked, which may say more than the job's own.
Site site_of(const ExportJob &job, const Record &record);

} // namespace roundlay

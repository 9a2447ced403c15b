#include "exporters/registry/shared_order.h"

#include "exporters/registry/job.h"

#include <stdexcept>

namespace roundlay {

const RaisingOrder &SharedOrder::of(const Layout &layout, const Bodies &bodies) {
    std::call_once(once_, [&] {
        order_ = raising_order(layout, bodies);
        known_ = true;
    });
    return order_;
}

const RaisingOrder &raising_order_of(const ExportJob &job) {
    if (job.bodies.size() != job.layout.models.size())
        throw std::logic_error("what cannot be built has no order of the raise");
    return job.order->of(job.layout, job.bodies);
}

Site site_of(const ExportJob &job, const Record &record) {
    return {raising_order_of(job), ticked_of(record, job.layout, job.shell.state)};
}

} // namespace roundlay

// The order of the raise is worked out once for a job and its copies, whoever asks.

#include "exporters/registry/job.h"
#include "exporters/registry/shared_order.h"
#include "tests/support/catch.h"
#include "tests/support/shells.h"

#include <stdexcept>

using namespace roundlay;

TEST_CASE("the order of the raise is worked out once for all copies of a job") {
    const ExportJob job = make_job(test::plain_shell()), copy = job;
    CHECK_FALSE(job.order->is_known());
    const RaisingOrder *order = &raising_order_of(copy);
    CHECK(job.order->is_known());
    CHECK(&raising_order_of(job) == order);
    const RaisingOrder plainly = raising_order(job.layout, job.bodies);
    REQUIRE(order->size() == plainly.size());
    for (const Index<Piece> piece : job.layout.pieces.indices()) {
        CHECK((*order)[piece].rests_on == plainly[piece].rests_on);
        CHECK((*order)[piece].lies_over == plainly[piece].lies_over);
        CHECK((*order)[piece].lies_under == plainly[piece].lies_under);
        CHECK((*order)[piece].covers == plainly[piece].covers);
    }
    CHECK_FALSE(make_job(test::plain_shell()).order->is_known());
}

TEST_CASE("a job without its wood has no order of the raise") {
    ExportJob job = make_job(test::plain_shell());
    job.bodies = {}; // as of a shell that cannot be built
    CHECK_THROWS_AS(raising_order_of(job), std::logic_error);
}

TEST_CASE("a site has what the record that is asked about has ticked") {
    const ExportJob job = make_job(test::plain_shell());
    const Index<Piece> first(0);
    Record record;
    (void)tick(record.done, {Deed::up, {job.layout.pieces[first].tag}, {}, {}, {}, {}});
    CHECK(site_of(job, record).ticked.is(first, Deed::up));
    CHECK_FALSE(site_of(job, *job.record).ticked.is(first, Deed::up));
}

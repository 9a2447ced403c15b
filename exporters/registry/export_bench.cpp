#include "exporters/registry/paper.h"
#include "exporters/sheets/bench/bench.h"

namespace roundlay {

std::optional<ExportFailure> export_bench(const ExportJob &job, OutputFolder &folder, Progress &progress) {
    return add_pdf(job, folder,
                   {"bench-set.pdf", said("each tail once, and pieces that are alike as rows"), "bench set",
                    sheets::bench_set(job.layout, only_pieces(job))},
                   progress);
}

} // namespace roundlay

package org.panwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * Adds to a benchmark the processor time one operation takes, in nanoseconds: the figure that still
 * means something on a machine whose cores are busy with other work.
 *
 * <p>Counts the whole process, so the garbage collector's share is in it.
 */
public class CpuTime implements InternalProfiler {
  private final OperatingSystemMXBean system =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
  private long before;

  @Override
  public String getDescription() {
    return "processor time of an operation";
  }

  @Override
  public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
    before = system.getProcessCpuTime();
  }

  @Override
  public Collection<? extends Result<?>> afterIteration(
      BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
    double nanoseconds = system.getProcessCpuTime() - before;
    double operations = result.getMetadata().getMeasuredOps();
    return List.of(
        new ScalarResult("cpu", nanoseconds / operations, "ns/op", AggregationPolicy.AVG));
  }
}

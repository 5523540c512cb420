// Mutants makes small changes in packages, a seeded sample of them, and tells which ones
// the packages' own quick tests (-short) do not notice. It works on a copy of what is committed.
//
//	go run ./core/internal/mutants [-seed n] [-for 55m] ./core/frame ./core/bark
//
// The changes and the runs are go-gremlins'. That has no sampling but looks only at lines
// that differ from a commit: lines drawn by the seed are spoilt in a commit of the copy,
// put right in the next, and looked at.
package main

import (
	"bufio"
	"context"
	"flag"
	"fmt"
	"io"
	"log"
	"math"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"runtime"
	"strconv"
	"strings"
	"time"
)

const gremlins = "github.com/go-gremlins/gremlins/cmd/gremlins"

// program is gremlins as main installs it, to be stopped as itself and not by way of go.
var program string

func main() {
	log.SetFlags(0)
	seed := flag.Uint64("seed", 1, "of the sample")
	whole := flag.Duration("for", 55*time.Minute, "time for all packages together")
	flag.Parse()
	if flag.NArg() == 0 {
		log.Fatal("mutants: name some packages")
	}
	copied, err := os.MkdirTemp("", "mutants")
	if err != nil {
		log.Fatal(err)
	}
	defer os.RemoveAll(copied)
	top := strings.TrimSpace(run(".", "git", "rev-parse", "--show-toplevel"))
	run(".", "git", "clone", "-q", "--local", top, copied)
	installed := filepath.Join(copied, ".git", "bin")
	install := exec.Command("go", "install", gremlins+"@v0.6.0")
	install.Env, install.Stderr = append(os.Environ(), "GOBIN="+installed), os.Stderr
	if err := install.Run(); err != nil {
		log.Fatalf("mutants: %v", err)
	}
	program = filepath.Join(installed, "gremlins")
	// It compares the names in a diff with those in the package's own directory, and
	// takes all the lines of a hunk from its first changed one on.
	run(copied, "git", "config", "diff.relative", "true")
	run(copied, "git", "config", "diff.context", "0")
	fmt.Printf("mutants: seed %d\n", *seed)
	begun := time.Now()
	var all tally
	for i, pkg := range flag.Args() {
		share := (*whole - time.Since(begun)) / time.Duration(flag.NArg()-i)
		t := sample(copied, pkg, *seed, share)
		fmt.Printf("%s: %s\n", pkg, t.counts())
		all.add(t)
	}
	fmt.Printf("all: %s\n", all.counts())
	for _, s := range all.survivors {
		fmt.Println("  not noticed:", s)
	}
}

// tally is what became of mutants. Unseen are those where coverage counts no run: code that
// no test runs, but also every condition of a case.
type tally struct {
	killed, lived, timed, unseen int
	survivors                    []string
}

func (t *tally) add(o tally) {
	t.killed, t.lived, t.timed, t.unseen = t.killed+o.killed, t.lived+o.lived, t.timed+o.timed, t.unseen+o.unseen
	t.survivors = append(t.survivors, o.survivors...)
}

func (t *tally) counts() string {
	judged := t.killed + t.lived
	if judged == 0 {
		return fmt.Sprintf("no mutants judged, %d ran out of time, %d unseen by coverage", t.timed, t.unseen)
	}
	return fmt.Sprintf("%d of %d noticed (%.0f %%); %d more ran out of time, %d are unseen by coverage",
		t.killed, judged, 100*float64(t.killed)/float64(judged), t.timed, t.unseen)
}

var (
	coverage = regexp.MustCompile(`done in ([0-9a-zµ.]+)`)
	outcome  = regexp.MustCompile(`^\s*(KILLED|LIVED|TIMED OUT|NOT COVERED) (\w+) at (\S+)`)
)

// leastWait is how long a mutant's tests have at least before they count as hanging:
// compiling it on a machine that is busy with other work takes longer than the tests.
const leastWait = 2 * time.Minute

// unleash is go-gremlins in a package's directory. It takes the time of one run with
// coverage as its measure, so that one must not come from the cache.
func unleash(ctx context.Context, in string, args ...string) *exec.Cmd {
	cmd := exec.CommandContext(ctx, program, append([]string{"unleash"}, args...)...)
	// It ends the run in hand and puts the source right.
	cmd.Cancel = func() error { return cmd.Process.Signal(os.Interrupt) }
	cmd.Dir, cmd.Stderr = in, os.Stderr
	// What is left for the long tests to notice takes minutes a mutant.
	cmd.Env = append(os.Environ(), "GOFLAGS=-count=1 -vet=off -short")
	return cmd
}

// dryRun finds the mutants that can be made, and how long one run of the tests takes.
func dryRun(in string) (runnable int, each time.Duration) {
	out, err := unleash(context.Background(), in, "--dry-run").Output()
	if err != nil {
		log.Fatalf("mutants: the tests of %s do not pass as they are: %v\n%s", in, err, out)
	}
	m := coverage.FindSubmatch(out)
	if m == nil {
		log.Fatalf("mutants: no time is said of the tests of %s:\n%s", in, out)
	}
	each, err = time.ParseDuration(string(m[1]))
	if err != nil {
		log.Fatalf("mutants: %v", err)
	}
	return strings.Count(string(out), "RUNNABLE "), each
}

// sample tries as many of a package's mutants as a time allows, all those on the lines
// it draws.
func sample(dir, pkg string, seed uint64, allowed time.Duration) tally {
	begun := time.Now()
	in := filepath.Join(dir, pkg)
	// The first one compiles.
	dryRun(in)
	runnable, each := dryRun(in)
	left := allowed - time.Since(begun)
	// Half of it: a mutant that hangs takes several times as long as one run.
	tries := float64(left) / 2 / float64(each) * float64(runtime.GOMAXPROCS(0))
	share := min(1, tries/float64(max(1, runnable)))
	lines := drawLines(dir, pkg, seed, share)
	fmt.Printf("%s: %d mutants, one run of its tests %s; looking at %.0f %% of its lines, %d\n",
		pkg, runnable, each.Round(time.Millisecond), 100*share, lines)
	if lines == 0 {
		return tally{}
	}
	within, cancel := context.WithTimeout(context.Background(), left)
	defer cancel()
	patience := max(5, int(math.Ceil(float64(leastWait)/float64(each))))
	cmd := unleash(within, in, "--diff", "HEAD~1", "--timeout-coefficient", strconv.Itoa(patience),
		"--workers", strconv.Itoa(runtime.GOMAXPROCS(0)))
	cmd.WaitDelay = time.Minute
	out, err := cmd.StdoutPipe()
	if err != nil {
		log.Fatal(err)
	}
	if err := cmd.Start(); err != nil {
		log.Fatal(err)
	}
	t := read(out, pkg)
	// It ends with a failure where mutants live.
	_ = cmd.Wait()
	return t
}

func read(out io.Reader, pkg string) tally {
	var t tally
	for lines := bufio.NewScanner(out); lines.Scan(); {
		m := outcome.FindStringSubmatch(lines.Text())
		if m == nil {
			continue
		}
		switch m[1] {
		case "KILLED":
			t.killed++
		case "TIMED OUT":
			t.timed++
		case "NOT COVERED":
			t.unseen++
			fmt.Println("  unseen by coverage:", pkg+"/"+m[3], m[2])
		default:
			t.lived++
			t.survivors = append(t.survivors, pkg+"/"+m[3]+" "+m[2])
			fmt.Println("  not noticed:", pkg+"/"+m[3], m[2])
		}
	}
	return t
}

// drawLines makes two commits in the copy, of which the second differs from the first
// in a share of a package's lines, and returns how many.
func drawLines(dir, pkg string, seed uint64, share float64) int {
	r := rand.New(rand.NewPCG(seed, seed))
	files, err := filepath.Glob(filepath.Join(dir, pkg, "*.go"))
	if err != nil {
		log.Fatal(err)
	}
	drawn := 0
	for _, name := range files {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		text, err := os.ReadFile(name)
		if err != nil {
			log.Fatal(err)
		}
		lines := strings.Split(string(text), "\n")
		for i := range lines {
			if r.Float64() < share {
				lines[i] += " // drawn"
				drawn++
			}
		}
		if err := os.WriteFile(name, []byte(strings.Join(lines, "\n")), 0o644); err != nil {
			log.Fatal(err)
		}
	}
	commit(dir, "drawn by seed "+strconv.FormatUint(seed, 10))
	run(dir, "git", "checkout", "-q", "HEAD~1", "--", ".")
	commit(dir, "as it was")
	return drawn
}

func commit(dir, subject string) {
	run(dir, "git", "-c", "user.name=mutants", "-c", "user.email=mutants@localhost",
		"commit", "-qam", subject, "--allow-empty")
}

func run(dir, name string, args ...string) string {
	cmd := exec.Command(name, args...)
	cmd.Dir, cmd.Stderr = dir, os.Stderr
	out, err := cmd.Output()
	if err != nil {
		log.Fatalf("mutants: %s %s: %v", name, strings.Join(args, " "), err)
	}
	return string(out)
}

package jobfile

import "testing"

// A job without a name is called like its file, wherever that lies.
func TestTitle(t *testing.T) {
	for file, want := range map[string]string{
		"den.yaml": "den", "jobs/den.yaml": "den", `C:\jobs\den.v2.yaml`: "den.v2", "den": "den", ".yaml": ".yaml", "jobs/": "jobs/", "": "",
	} {
		if got := title(file); got != want {
			t.Errorf("%q: %q, want %q", file, got, want)
		}
		j, _, _ := ReadJob(file, []byte("strake: 1\n"))
		k, _ := ReadSketch(file, []byte("strake: 1\n"))
		if j.Name != want || k.Job.Name != want {
			t.Errorf("%q: job %q, sketch %q", file, j.Name, k.Job.Name)
		}
	}
}

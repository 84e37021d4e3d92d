package goods

// worn is what is worn or at hand in each task that has something to mind.
var worn = map[string]string{
	"tear out":               "gloves, safety glasses, shoes with a sole that nails do not pass, dust mask",
	"crawl space":            "coverall, gloves, respirator, lamp",
	"make the subfloor flat": "respirator, safety glasses, hearing protection",
	"undercut":               "safety glasses, dust mask, hearing protection",
	"saw":                    "safety glasses, hearing protection, dust mask or respirator, push block; no gloves",
	"nail":                   "safety glasses, hearing protection, knee pads",
	"glue and finish":        "gloves that the solvent does not pass, safety glasses, metal can with a lid for rags",
	"carry and stack":        "gloves, shoes with toe caps",
}

// gear is the protection of each task.
func (k *work) gear() {
	for _, t := range k.f.Site.Tasks {
		if s := worn[t]; s != "" {
			k.add(Line{Group: Gear, What: s, From: t, Source: common})
		}
	}
}

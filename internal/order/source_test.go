package order

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
)

// house is the source of the rooms, tests left out.
type house struct {
	module string
	files  *token.FileSet
	rooms  map[string][]*ast.File
}

// open parses every file of the tree that is no test, whatever its build tags.
func open(tree fs.FS, module string) (house, error) {
	h := house{module, token.NewFileSet(), map[string][]*ast.File{}}
	err := fs.WalkDir(tree, ".", func(name string, d fs.DirEntry, err error) error {
		switch base := d.Name(); {
		case err != nil:
			return err
		case d.IsDir():
			if name != "." && (base[0] == '.' || base[0] == '_' || base == "testdata") {
				return fs.SkipDir
			}
			return nil
		case !strings.HasSuffix(base, ".go") || strings.HasSuffix(base, "_test.go"):
			return nil
		}
		data, err := fs.ReadFile(tree, name)
		if err != nil {
			return err
		}
		f, err := parser.ParseFile(h.files, name, data, parser.SkipObjectResolution)
		h.rooms[path.Dir(name)] = append(h.rooms[path.Dir(name)], f)
		return err
	})
	return h, err
}

// imports are the paths a file imports, by the name they have in it.
func imports(f *ast.File) map[string]string {
	out := map[string]string{}
	for _, s := range f.Imports {
		p, _ := strconv.Unquote(s.Path.Value)
		name := path.Base(p)
		if len(name) > 1 && name[0] == 'v' && strings.Trim(name[1:], "0123456789") == "" {
			name = path.Base(path.Dir(p)) // math/rand/v2 is rand
		}
		if s.Name != nil {
			name = s.Name.Name
		}
		for out[name] != "" { // two blank imports
			name += "+"
		}
		out[name] = p
	}
	return out
}

// own is the room of this tree that an import path names.
func (h house) own(p string) (room string, ok bool) {
	return strings.CutPrefix(p, h.module+"/")
}

// leansOn is every room that a room imports, straight or the long way round.
func (h house) leansOn(room string) map[string]bool {
	out := map[string]bool{}
	var walk func(string)
	walk = func(r string) {
		for _, f := range h.rooms[r] {
			for _, p := range imports(f) {
				if o, ok := h.own(p); ok && !out[o] {
					out[o] = true
					walk(o)
				}
			}
		}
	}
	walk(room)
	return out
}

// breaches is every place where the source breaks the policy, in order.
func (h house) breaches(p policy) []string {
	var out []string
	for room, files := range h.rooms {
		if p.may[room] == nil {
			out = append(out, room+": no line of policy.txt names this room")
		}
		for _, f := range files {
			out = append(out, h.file(p, room, f)...)
		}
		all := h.leansOn(room)
		for _, n := range p.never[room] {
			if all[n] {
				out = append(out, fmt.Sprintf("%s comes to %s, and must not", room, n))
			}
		}
	}
	for room := range p.may {
		if h.rooms[room] == nil {
			out = append(out, room+": policy.txt names it, but there is no such room")
		}
	}
	slices.Sort(out)
	return out
}

// file is what one file of a room breaks.
func (h house) file(p policy, room string, f *ast.File) []string {
	var out []string
	say := func(n ast.Node, format string, args ...any) {
		out = append(out, fmt.Sprintf("%s: ", h.files.Position(n.Pos()))+fmt.Sprintf(format, args...))
	}
	names := imports(f)
	for name, pkg := range names {
		own, ok := h.own(pkg)
		switch {
		case name == "." || strings.HasPrefix(name, "_") && pkg != "embed":
			say(f.Name, "%s is imported without a name to see its use by", pkg)
		case ok && !p.may[room][own]:
			say(f.Name, "%s may not import %s", room, own)
		case !ok && !p.allows(room, pkg):
			say(f.Name, "%s may not import %s", room, pkg)
		}
	}
	if p.rim[room] {
		return out
	}
	ast.Inspect(f, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.SelectorExpr:
			if x, ok := n.X.(*ast.Ident); ok {
				if u, ok := p.uses[names[x.Name]]; ok && !u.allows(n.Sel.Name) {
					say(n, "%s uses %s.%s", room, names[x.Name], n.Sel.Name)
				}
			}
		case *ast.CallExpr:
			if x, ok := n.Fun.(*ast.Ident); ok && (x.Name == "print" || x.Name == "println") {
				say(n, "%s calls %s", room, x.Name)
			}
		case *ast.StructType:
			for _, f := range n.Fields.List {
				if f.Tag != nil && !p.allows(room, "encoding/json") {
					say(f.Tag, "%s says how a value is written: %s", room, f.Tag.Value)
				}
			}
		}
		return true
	})
	return out
}

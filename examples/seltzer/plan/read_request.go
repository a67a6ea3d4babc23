package plan

// ReadRequest reads a request from JSON; [Make] checks what it asks for. The error is a
// [*RequestError].
func ReadRequest(text []byte) (Request, error) {
	var r Request
	said, err := bind(text, &r)
	if err != nil {
		return Request{}, err
	}
	r.typed = said
	return r, nil
}

// ParseRequest reads a request from JSON and checks it. The error is a
// [*RequestError].
func ParseRequest(text []byte) (Request, error) {
	r, err := ReadRequest(text)
	if err != nil {
		return Request{}, err
	}
	as, err := settled(r)
	if err == nil {
		_, err = newRecipe(as)
	}
	if err != nil {
		return Request{}, r.typed.echoed(err)
	}
	return r, nil
}

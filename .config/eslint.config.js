import eslint from '@eslint/js'
import tseslint from 'typescript-eslint'

export default tseslint.config(
  {ignores: ['.build', 'site-demo', 'node_modules']},
  eslint.configs.recommended,
  ...tseslint.configs.strict,
  {
    rules: {
      'eqeqeq': 'error',
      'no-console': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off',
    },
  },
  {
    files: ['templates/**/*.js'],
    languageOptions: {globals: {document: 'readonly', window: 'readonly', location: 'readonly'}},
  },
)
